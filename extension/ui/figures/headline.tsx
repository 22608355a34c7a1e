import type { Adaptation, Interval } from '../../../engine/model.ts';
import { FigureButton, type Opened, type Side, SourcePanel, useOpened } from './figure-sources.tsx';
import { amount, NET_CARBS, rangeText, short } from './format.ts';

interface BigProps {
  label: string;
  side: Side;
  value: Interval | null;
  opened: Opened;
}

function Big({ label, side, value, opened }: BigProps) {
  const range = rangeText(value);
  return (
    <div class="big">
      <dt>{label}</dt>
      <dd>
        <FigureButton opened={opened} figure={{ side, row: NET_CARBS }} name={label}>
          <span class="big-figure">{value ? `${amount(value.best)} g` : 'not known'}</span>
        </FigureButton>
        <span class="big-range">{range === '' ? 'no range' : `likely ${range}`}</span>
      </dd>
    </div>
  );
}

/** The figures the user acts on: net carbs of a serving, before and after, and how sure they are. */
export function Headline({ adaptation }: { adaptation: Adaptation }) {
  const { before, after, plan, goals } = adaptation;
  const from = before.perServing.netCarbsG;
  const to = after.perServing.netCarbsG;
  const missing = after.uncounted.length;
  const opened = useOpened();
  return (
    <section class="headline" aria-labelledby="headline-title">
      <h2 id="headline-title">
        {after.servings === 1
          ? 'Net carbs in the whole dish'
          : `Net carbs in one of ${short(after.servings)} servings`}
      </h2>
      <dl class="bigs">
        <Big label="Before" side="before" value={from} opened={opened} />
        <Big label="After" side="after" value={to} opened={opened} />
      </dl>
      <SourcePanel opened={opened} servings={after.servings} />
      <p role="status" class={plan.met ? 'verdict' : 'verdict verdict-over'}>
        {plan.met
          ? `Within the budget of ${short(goals.budgetG)} g.`
          : `Above the budget of ${short(goals.budgetG)} g. This is the closest found.`}
        {plan.met && to && to.high > goals.budgetG
          ? ` At the upper end of the range it would be above it.`
          : ''}
        {plan.met && goals.cautious && to && to.high <= goals.budgetG
          ? ' So is the upper end of the range.'
          : ''}
        {missing > 0
          ? ` ${missing} ${missing === 1 ? 'line is' : 'lines are'} not counted in these figures.`
          : ''}
      </p>
      {!plan.met && plan.limits.length > 0 && (
        <ul class="limits">
          {plan.limits.map((limit) => (
            <li key={limit.code + limit.text}>{limit.text}</li>
          ))}
        </ul>
      )}
    </section>
  );
}
