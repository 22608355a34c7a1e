import type { ComponentChildren } from 'preact';
import { useId, useRef, useState } from 'preact/hooks';
import type { TracedLine } from '../../../engine/index.ts';
import type { Interval } from '../../../engine/model.ts';
import { figureRange, figureText, type NutrientRow } from './format.ts';
import { gramsRange, matchReason, sourceText, weightReason } from './source-words.ts';
import { useTrace } from './trace-context.ts';

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
      <span class="hidden">, what it rests on</span>
    </button>
  );
}

const inUnit = (value: Interval | null, row: NutrientRow): string =>
  value === null ? 'not known' : `${figureText(value, row)} ${row.unit}`;

/** Net carbs are a difference: the figures it is taken from stand beside it. */
function netParts({ food }: TracedLine): string {
  const { carbohydrateG, fiberG, polyolsG, alluloseG } = food.per100g;
  const polyols = Object.values(polyolsG ?? {}).reduce((sum, grams) => sum + grams, 0);
  const withoutFibre = food.carbohydrateBasis !== 'total';
  const parts = [
    `${carbohydrateG ?? 'unknown'} g carbohydrate${withoutFibre ? ' without fibre' : ''}`,
    fiberG === null ? 'fibre not known' : `${fiberG} g fibre`,
    ...(polyols > 0 ? [`${polyols} g sugar alcohols`] : []),
    ...((alluloseG ?? 0) > 0 ? [`${alluloseG} g allulose`] : []),
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
        <span>{line.food.name}</span>
        <span class="figure">
          {inUnit(value, row)} <span class="range">{figureRange(value, row)}</span>
        </span>
      </p>
      <p>
        {gramsRange(line.grams)} in the dish, with {inUnit(each, row)} in 100 g
        {row.nutrient === 'netCarbsG' && netParts(line)}, over {servings}{' '}
        {servings === 1 ? 'serving' : 'servings'}.
      </p>
      <p class="quiet">Grams: {weightReason(line.weight)}.</p>
      <p class="quiet">
        Food: {matchReason(line.match)}. Figures: {sourceText(line.food)}.
      </p>
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
  [...new Set(lines.map(({ food }) => food.name))].join(', ');

/** 'Fibre' for the row 'of which fibre'. */
function plainLabel({ label }: NutrientRow): string {
  const bare = label.replace(/^of which /, '');
  return bare.charAt(0).toUpperCase() + bare.slice(1);
}

interface PanelProps {
  opened: Opened;
  servings: number;
}

/** What the open figure rests on: the lines that make it, each with grams, food and source. */
export function SourcePanel({ opened, servings }: PanelProps) {
  const trace = useTrace();
  const { figure, panelId } = opened;
  if (!figure) return null;
  const { side, row, keys } = figure;
  const wanted = keys ? trace[side].filter(({ key }) => keys.includes(key)) : trace[side];
  const { lines, small, unknown } = partsOf(wanted, row);
  return (
    <div class="sources" id={panelId}>
      <p class="sources-head">
        <strong>
          {plainLabel(row)} in a serving, {side}: what makes it
        </strong>
        <button
          type="button"
          onClick={opened.close}
          onKeyDown={(event) => closeOnEscape(event, opened)}
        >
          Close<span class="hidden"> what makes {plainLabel(row).toLowerCase()}</span>
        </button>
      </p>
      <ul class="trace">
        {lines.map((line) => (
          <TraceLine key={line.key} line={line} row={row} servings={servings} />
        ))}
      </ul>
      {lines.length === 0 && small.length > 0 && <p>No counted line brings any worth showing.</p>}
      {small.length > 0 && <p class="quiet">Counted with next to nothing: {names(small)}.</p>}
      {unknown.length > 0 && (
        <p>
          <strong>Without a figure in the source, so not in the sum:</strong> {names(unknown)}.
        </p>
      )}
    </div>
  );
}
