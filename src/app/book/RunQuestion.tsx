import { useState } from 'react';
import { finding, type Problem } from '../../problem';
import { formatMass } from '../../units';
import { buyWords, needWords, runBecause, stockWords } from '../../words/runWords';
import type { RunPlan } from '../../yield';
import { Complaint } from '../parts/Complaint';
import { Disclosure } from '../parts/Disclosure';
import { Verdict } from '../parts/Figure';
import { FigureTable } from '../parts/FigureTable';
import { Question } from '../parts/Question';
import { SelectField } from '../parts/SelectField';
import type { Mark } from '../parts/StatusMark';
import { sayOnPage } from '../words/sayOnPage';
import { daysWords, RUN_LABELS, runAnswer, runAskWords, runAssumed } from '../words/bookRun';
import type { BookProps } from './bookProps';
import { FormBox } from './FormBox';
import { plannedRun, runFacts, type PlannedRun, type RunTyped } from './runAsk';
import { RUN_FIELDS, type RunField } from './runFields';
import { useForm, type Form } from './useForm';

const FIRST: readonly RunField[] = ['castings', 'molds', 'mixedG'];
const OTHERS = (Object.keys(RUN_FIELDS) as RunField[]).filter((name) => !FIRST.includes(name));

/** Can we make N more? */
export function RunQuestion({ book, no }: Pick<BookProps, 'book' | 'no'>) {
  const { pieces, core } = book;
  const [chosen, setChosen] = useState('');
  const form = useForm(RUN_FIELDS);
  const piece = book.piece ?? pieces.find(({ id }) => id === chosen);
  const facts = piece === undefined ? undefined : runFacts(piece, core, __APP_VERSION__);
  const asked = facts === undefined || form.isUnread ? undefined : plannedRun(typedOf(form), facts);
  const run = asked?.ok === true ? asked.value : undefined;
  const problem = asked?.ok === false ? asked.problem : undefined;
  const assumed = facts === undefined ? {} : runAssumed(facts);
  return (
    <Question
      no={no}
      mark={problem === undefined ? markOf(run) : 'stop'}
      ask={runAskWords(problem === undefined ? form.value('castings') : undefined)}
      answer={run === undefined ? undefined : <Verdict>{runAnswer(run.plan)}</Verdict>}
    >
      {book.piece === undefined && (
        <SelectField
          label="Of which piece"
          value={chosen}
          blank="none chosen"
          options={pieces.map(({ id, name }) => ({ value: id, label: name }))}
          onChoose={setChosen}
        />
      )}
      {piece !== undefined && facts === undefined && (
        <p className="why">
          The casting in hand of {piece.name} names no foam card of this shop: choose one on Batch, and the
          stock and the kits of it count here.
        </p>
      )}
      {facts !== undefined && (
        <>
          <Boxes {...{ form, assumed, problem }} names={FIRST} />
          <details>
            <summary>Spares, days, mold life and costs</summary>
            <Boxes {...{ form, assumed, problem }} names={OTHERS} />
          </details>
          {run === undefined && asked === undefined && (
            <p className="note">
              {form.value('castings') === undefined
                ? 'Type how many are wanted.'
                : 'Type what one casting takes: its plan is not worked out as it stands.'}
            </p>
          )}
        </>
      )}
      {problem !== undefined && !isOfBox(problem) && <Complaint problem={problem} />}
      {run !== undefined && <RunFigures run={run} />}
    </Question>
  );
}

function Boxes({
  form,
  names,
  assumed,
  problem,
}: {
  form: Form<RunField>;
  names: readonly RunField[];
  assumed: ReturnType<typeof runAssumed>;
  problem: Problem | undefined;
}) {
  return (
    <div className="fields">
      {names.map((name) => (
        <FormBox
          key={name}
          form={form}
          name={name}
          label={RUN_LABELS[name]}
          assumed={assumed[name]}
          complaint={problem?.values.input === name ? sayOnPage(problem) : undefined}
        />
      ))}
    </div>
  );
}

/** What is said of one box stands at that box. */
const isOfBox = ({ values }: Problem): boolean => String(values.input) in RUN_FIELDS;

function typedOf(form: Form<RunField>): RunTyped {
  const typed = Object.fromEntries(
    (Object.keys(RUN_FIELDS) as RunField[]).flatMap((name) => {
      const value = form.value(name);
      if (value === undefined) return [];
      return name === 'dayH' ? [['dayMin', 60 * value]] : [[name, value]];
    }),
  );
  return typed;
}

function markOf(run: PlannedRun | undefined): Mark {
  if (run === undefined) return 'open';
  const { castings, spares, stock } = run.plan;
  if (stock.castings === undefined) return 'unknown';
  return stock.castings < castings + spares ? 'stop' : 'fine';
}

/** Where the stock ends and what to buy stand first. */
function RunFigures({ run: { plan, casting } }: { run: PlannedRun }) {
  const isUnpriced = plan.buyKg !== undefined && plan.buyKg > 0 && plan.buy === undefined;
  return (
    <>
      <FigureTable rows={rowsOf(plan)} caption="Castings and spares together, a cup test for each day." />
      {isUnpriced && <Complaint problem={finding('KITS_UNKNOWN', 'unknown', { needKg: plan.buyKg! })} />}
      {(plan.buy?.findings ?? []).map((problem) => (
        <Complaint key={problem.code} problem={problem} />
      ))}
      <div className="chg">
        <Disclosure>
          {runBecause(plan, casting).map((text) => (
            <p key={text}>{text}</p>
          ))}
        </Disclosure>
      </div>
    </>
  );
}

const rowsOf = (plan: RunPlan): { name: string; value: string }[] => [
  { name: 'Stock', value: stockWords(plan) },
  { name: 'Buy', value: buyWords(plan) },
  { name: 'Material', value: `${formatMass(1000 * plan.materialKg)}: ${needWords(plan)}` },
  { name: 'Days', value: daysWords(plan) },
  ...(plan.costPerCasting === undefined
    ? []
    : [
        {
          name: 'Cost',
          value: `${plan.costPerCasting.toFixed(2)} of your own money for each casting that is kept`,
        },
      ]),
];
