/** Figures that open what they come from: lines, foods and sources. */
import type { ComponentChildren } from 'preact';
import { useId, useRef, useState } from 'preact/hooks';
import type { Trace, TracedLine } from '../../../../engine/index.ts';
import type { Adaptation, Interval } from '../../../../engine/model.ts';
import { foodWord } from '../../words/food-words.ts';
import { portionWord } from '../../words/portion.ts';
import { say, sayCount } from '../../words/say.ts';
import { digitsOf, figureRange, figureText, type NutrientRow } from '../format.ts';
import { gramsRange, matchReason, sourceText, weightReason } from './source-words.ts';
import { useTrace } from './trace-context.ts';
import { mayBeAbove, whyHigher } from './why-higher.ts';

export type Side = 'before' | 'after';

/** One figure whose sources can be opened. */
export interface FigureOf {
  side: Side;
  row: NutrientRow;
  /** Only these lines of the tally; all of them when left out. */
  keys?: readonly string[];
}

const sameFigure = (a: FigureOf | null, b: FigureOf): boolean =>
  a?.side === b.side &&
  a.row.nutrient === b.row.nutrient &&
  (a.keys ?? []).join() === (b.keys ?? []).join();

export interface Opened {
  figure: FigureOf | null;
  panelId: string;
  isOpen(figure: FigureOf): boolean;
  toggle(figure: FigureOf, opener: HTMLElement): void;
  /** Closes the panel; the focus goes back to the figure that opened it. */
  close(): void;
}

/** Which figure of a section is open; one at a time. */
export function useOpened(): Opened {
  const panelId = useId();
  const opener = useRef<HTMLElement | null>(null);
  const [figure, setFigure] = useState<FigureOf | null>(null);
  return {
    figure,
    panelId,
    isOpen: (one) => sameFigure(figure, one),
    toggle: (one, by) => {
      opener.current = by;
      setFigure(sameFigure(figure, one) ? null : one);
    },
    close: () => {
      setFigure(null);
      opener.current?.focus();
    },
  };
}

function closeOnEscape(event: KeyboardEvent, opened: Opened): void {
  if (event.key !== 'Escape') return;
  // Unhandled, the browser would close the whole popup.
  event.preventDefault();
  opened.close();
}

interface ButtonProps {
  opened: Opened;
  figure: FigureOf;
  /** Said before the figure to those who hear it. */
  name: string;
  children: ComponentChildren;
}

/** A figure that opens what it rests on. */
export function FigureButton({ opened, figure, name, children }: ButtonProps) {
  const open = opened.isOpen(figure);
  return (
    <button
      type="button"
      class="figure-button"
      aria-expanded={open}
      aria-controls={open ? opened.panelId : undefined}
      onClick={({ currentTarget }) => opened.toggle(figure, currentTarget)}
      onKeyDown={(event) => open && closeOnEscape(event, opened)}
    >
      <span class="hidden">{name}: </span>
      {children}
      <span class="hidden">, {say('whereFrom')}</span>
    </button>
  );
}

const inUnit = (value: Interval | null, row: NutrientRow): string =>
  value === null ? say('notKnown') : `${figureText(value, row)} ${row.unit}`;

/** Net carbs are a difference: the figures it is taken from stand beside it. */
function netParts({ food }: TracedLine): string {
  const { carbohydrateG, fiberG, polyolsG, alluloseG } = food.per100g;
  const polyols = Object.values(polyolsG ?? {}).reduce((sum, grams) => sum + grams, 0);
  const figure = (grams: number) => digitsOf(grams, 0, 2);
  const carbs = food.carbohydrateBasis === 'total' ? 'partCarbs' : 'partCarbsNoFibre';
  const parts = [
    carbohydrateG === null ? say('partCarbsUnknown') : say(carbs, figure(carbohydrateG)),
    fiberG === null ? say('partFibreUnknown') : say('partFibre', figure(fiberG)),
    ...(polyols > 0 ? [say('partPolyols', figure(polyols))] : []),
    ...((alluloseG ?? 0) > 0 ? [say('partAllulose', figure(alluloseG ?? 0))] : []),
  ];
  return ` (${parts.join(', ')})`;
}

interface LineProps {
  line: TracedLine;
  row: NutrientRow;
  servings: number;
}

function TraceLine({ line, row, servings }: LineProps) {
  const value = line.perServing[row.nutrient];
  const each = line.per100g[row.nutrient];
  return (
    <li>
      <p class="trace-head">
        <span>{foodWord(line.food.id, line.food.name)}</span>
        <span class="figure">
          {inUnit(value, row)} <span class="range">{figureRange(value, row)}</span>
        </span>
      </p>
      <p>
        {say('traceLine', gramsRange(line.grams), inUnit(each, row))}
        {row.nutrient === 'netCarbsG' && netParts(line)}, {sayCount('overServings', servings)}.
      </p>
      <p class="soft">{say('traceGrams', weightReason(line.weight))}</p>
      <p class="soft">{say('traceFood', matchReason(line.match), sourceText(line.food))}</p>
    </li>
  );
}

/** Below this share of the figure a line is only named, as is one that rounds to nothing. */
const NEXT_TO_NOTHING = 0.002;

interface Parts {
  lines: TracedLine[];
  small: TracedLine[];
  unknown: TracedLine[];
}

/** Largest part first; lines next to nothing and lines without the figure apart. */
export function partsOf(lines: readonly TracedLine[], row: NutrientRow): Parts {
  const { nutrient, scale, digits } = row;
  const known = lines.filter(({ perServing }) => perServing[nutrient] !== null);
  const of = (line: TracedLine): number => line.perServing[nutrient]?.best ?? 0;
  const total = known.reduce((sum, line) => sum + of(line), 0);
  const counts = (line: TracedLine): boolean => {
    const high = line.perServing[nutrient]?.high ?? 0;
    return high > NEXT_TO_NOTHING * total && high * scale >= 0.5 * 10 ** -digits;
  };
  return {
    lines: known.filter(counts).sort((a, b) => of(b) - of(a)),
    small: known.filter((line) => !counts(line)),
    unknown: lines.filter(({ perServing }) => perServing[nutrient] === null),
  };
}

const names = (lines: readonly TracedLine[]): string =>
  [...new Set(lines.map(({ food }) => foodWord(food.id, food.name)))].join(', ');

interface PanelProps {
  opened: Opened;
  adaptation: Adaptation;
}

function PanelHead({ opened, side, row, adaptation }: PanelProps & Omit<FigureOf, 'keys'>) {
  const label = say(row.word);
  return (
    <p class="sources-head">
      <strong>
        {say(side === 'before' ? 'sourcesBefore' : 'sourcesAfter', label, portionWord(adaptation))}
      </strong>
      <button
        type="button"
        class="button bare"
        onClick={opened.close}
        onKeyDown={(event) => closeOnEscape(event, opened)}
      >
        {say('close')}
        <span class="hidden">: {label}</span>
      </button>
    </p>
  );
}

/** Where the budget lies within the range of a serving: what may bring it above. */
function WhyHigher({
  adaptation,
  trace,
  side,
  row,
}: Pick<PanelProps, 'adaptation'> & FigureOf & { trace: Trace }) {
  const { after, goals } = adaptation;
  const net = adaptation.verdict.netCarbsG;
  if (side !== 'after' || row.nutrient !== 'netCarbsG' || !net) return null;
  if (!mayBeAbove(net, goals.budgetG)) return null;
  const reasons = whyHigher(trace.after, after.servings);
  if (reasons.length === 0) return null;
  return (
    <div class="why-higher">
      <p>{say('whyHigher', digitsOf(Math.ceil(net.high - 1e-9), 0))}</p>
      <ul>
        {reasons.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
    </div>
  );
}

/** What the open figure comes from: the lines that make it, each with grams, food and source. */
export function SourcePanel({ opened, adaptation }: PanelProps) {
  const { figure, panelId } = opened;
  const trace = useTrace(figure !== null);
  if (!figure || !trace) return null;
  const { side, row, keys } = figure;
  const wanted = keys ? trace[side].filter(({ key }) => keys.includes(key)) : trace[side];
  const { lines, small, unknown } = partsOf(wanted, row);
  return (
    <div class="sources" id={panelId}>
      <PanelHead opened={opened} side={side} row={row} adaptation={adaptation} />
      {!keys && <WhyHigher adaptation={adaptation} trace={trace} side={side} row={row} />}
      <ul class="trace">
        {lines.map((line) => (
          <TraceLine key={line.key} line={line} row={row} servings={adaptation.after.servings} />
        ))}
      </ul>
      {lines.length === 0 && small.length > 0 && <p>{say('noneWorthShowing')}</p>}
      {small.length > 0 && <p class="soft">{say('nextToNothing', names(small))}</p>}
      {unknown.length > 0 && <p>{say('withoutFigure', names(unknown))}</p>}
    </div>
  );
}
