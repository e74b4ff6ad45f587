/** Choices of the parameter lists in words; one without words of its own is shown as it is. */
const WORDS: Readonly<Record<string, string>> = {
  open: 'stands on the board',
  closed: 'hangs free',
  least: 'what takes least rubber',
  straight: 'a box along the scan',
  turned: 'a box turned to its smallest plan',
  cylinder: 'a cylinder',
  rubber: 'rubber',
  filler: 'filler pieces',
  best: 'the way that locks least',
  '+x': '+x, to its own right',
  '-x': '-x, to its own left',
  '+y': '+y, to the front',
  '-y': '-y, to the back',
  '+z': '+z, straight up',
  '-z': '-z, straight down',
};

export const choiceWords = (value: string): string => WORDS[value] ?? value;
