import { amount } from '../../words/sentence';
import { LineField } from '../parts/LineField';
import { readKitsText } from '../ticket/kits';

/** Kit sizes and prices as one line of text, read back below. */
export function KitsLine({ text, onText }: { text: string; onText: (text: string) => void }) {
  const read = readKitsText(text);
  return (
    <LineField
      label="Kits it is sold in, with prices"
      text={text}
      onText={onText}
      readback={
        !read.ok
          ? ''
          : read.kits.length === 0
            ? 'such as 2 kg=40, 5 kg=90'
            : read.kits
                .map(({ massKg, price }) =>
                  price === undefined
                    ? `${amount(massKg)} kg without a price`
                    : `${amount(massKg)} kg for ${amount(price, 6)}`,
                )
                .join('; ')
      }
      wrong={
        read.ok
          ? undefined
          : `“${read.text}” is no kit. Write each by its mass, and its price if you know it: 2 kg=40.`
      }
    />
  );
}
