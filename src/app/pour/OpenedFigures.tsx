import type { OpenedFigure, OpenedInput } from '../../plan';
import { formulaWords, fromWords, valueWords } from '../words/figureWords';

/** Figures, each with its formula, what went into it, where that comes from, and whose formula it is. */
export const OpenedFigures = ({ figures }: { figures: readonly OpenedFigure[] }) =>
  figures.map((figure) => <Opened key={figure.key} figure={figure} />);

function Opened({ figure }: { figure: OpenedFigure }) {
  const { title, formula, inputs, source } = figure;
  return (
    <section className="opened">
      <h3>
        {title}: {valueWords(figure)}
      </h3>
      <p className="formula">= {formulaWords(formula)}</p>
      <table aria-label={`What goes into: ${title}`}>
        <tbody>
          {inputs.map((input) => (
            <tr key={input.title}>
              <th scope="row">{input.title}</th>
              <td className="num">
                <span className={input.isAssumed === true ? 'assumed' : undefined}>{valueWords(input)}</span>
              </td>
              <td className="from">
                <From input={input} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="source">Source: {source}</p>
    </section>
  );
}

const From = ({ input: { from, isAssumed } }: { input: OpenedInput }) =>
  isAssumed === true ? <>assumed: {fromWords(from)}</> : fromWords(from);
