/** The verdict: one sentence, its state, and the loaf it is drawn as. */
import type { ComponentChildren } from 'preact';
import type { Adaptation } from '../../../engine/model.ts';
import { portionStart } from '../words/portion.ts';
import { say, sayCount, sayWith } from '../words/say.ts';
import { about, digitsOf, NET_CARBS, short } from './format.ts';
import { loafFigures } from './loaf/loaf-figures.ts';
import { StateMark } from './loaf/state-mark.tsx';
import { VerdictLoaf } from './loaf/verdict-loaf.tsx';
import { FigureButton, SourcePanel, useOpened } from './sources/figure-sources.tsx';
import { type ShownVerdict, shownVerdict } from './verdict.ts';

/** What the range adds to the sentence; '' when the budget does not hang on it. */
export function rangeSentence({ state, after }: ShownVerdict, budgetG: number): string {
  const high = digitsOf(Math.ceil(after.high - 1e-9), 0);
  if (state === 'cannotBeTold') return say('onlyCounted');
  if (after.high - after.best < 0.05) return '';
  if (state === 'fits') return say('atMost', high);
  if (state === 'tooMuch' && after.best > budgetG && after.low <= budgetG)
    return say('mayBeAsLittle', digitsOf(Math.floor(after.low), 0));
  return say('mayBeAsMuch', high);
}

/** Pieces made smaller than this share of what they were are told beside one of the old size. Own choice. */
const SMALLER = 0.95;

/**
 * 'One as big as before: about 25 g.' Where the dish is cut into more pieces; '' where a piece is as it was,
 * and where the page has one piece only, which nobody eats.
 */
export function oldSizeSentence(
  { before, after }: Pick<Adaptation, 'before' | 'after'>,
  nowG: number,
): string {
  if (before.servings <= 1 || before.servings > SMALLER * after.servings) return '';
  return say('oneOfOldSize', about((nowG * after.servings) / before.servings));
}

interface SentenceProps {
  adaptation: Adaptation;
  verdict: ShownVerdict;
  opened: ReturnType<typeof useOpened>;
}

/** 'A roll has about 14.8 g, it was 49.' Pieces of another size are named: 'one of 12 had 49'. */
function comparison(
  adaptation: Adaptation,
  now: ComponentChildren,
  was: ComponentChildren,
): ComponentChildren[] {
  const [before, after] = [adaptation.before.servings, adaptation.after.servings];
  if (before === after) return sayWith('verdictSentence', portionStart(adaptation), now, was);
  return before === 1
    ? sayWith('verdictOfWhole', short(after), now, was)
    : sayWith('verdictOneOf', short(after), now, short(before), was);
}

/** A figure and the stop after it stay on one line. */
function glued(pieces: readonly ComponentChildren[]): ComponentChildren[] {
  return pieces.map((piece, at): ComponentChildren => {
    const next = pieces[at + 1];
    if (typeof piece === 'string') {
      const after = typeof pieces[at - 1] === 'object' && /^[,.:]/.test(piece);
      return after ? piece.slice(1) : piece;
    }
    const stop = typeof next === 'string' ? (/^[,.:]/.exec(next)?.[0] ?? '') : '';
    return (
      <span key={at} class="unbroken">
        {piece}
        {stop}
      </span>
    );
  });
}

/** Both figures open what they rest on. */
function Sentence({ adaptation, verdict, opened }: SentenceProps): ComponentChildren {
  const { after, before } = verdict;
  const now = (
    <FigureButton opened={opened} figure={{ side: 'after', row: NET_CARBS }} name={say('loafNow')}>
      <b class="verdict-figure">{short(after.best)} g</b>
    </FigureButton>
  );
  if (!before)
    return <p class="verdict-say">{sayWith('verdictOnly', portionStart(adaptation), now)}</p>;
  const was = (
    <FigureButton
      opened={opened}
      figure={{ side: 'before', row: NET_CARBS }}
      name={say('loafBefore')}
    >
      <span class="verdict-was">{about(before.best)}</span>
    </FigureButton>
  );
  return <p class="verdict-say">{glued(comparison(adaptation, now, was))}</p>;
}

interface Props {
  adaptation: Adaptation;
  /** The loaf shows its ingredient groups. */
  groups?: boolean;
  /** Stands beside the state; the range's sentence when left out. */
  aside?: string | undefined;
}

export function VerdictCard({ adaptation, groups = false, aside }: Props) {
  const opened = useOpened();
  const verdict = shownVerdict(adaptation);
  const figures = loafFigures(adaptation);
  const assumed = adaptation.verdict.assumedServings;
  if (!verdict) {
    return (
      <section class="card verdict" aria-label={say('verdict')}>
        <p class="verdict-say" role="status">
          {say('nothingCounted')}
        </p>
      </section>
    );
  }
  const range = aside ?? rangeSentence(verdict, adaptation.goals.budgetG);
  const untold = verdict.state === 'cannotBeTold';
  const oldSize = untold ? '' : oldSizeSentence(adaptation, verdict.after.best);
  return (
    <section
      class={untold ? 'card verdict verdict-untold' : 'card verdict'}
      aria-label={say('verdict')}
    >
      <div class="verdict-words">
        <div class="verdict-state" role="status">
          <StateMark state={verdict.state} />
          <span class={oldSize === '' ? 'verdict-asides' : 'verdict-asides two-lines'}>
            <span class="soft">{range}</span>
            {oldSize !== '' && <span class="old-size">{oldSize}</span>}
          </span>
        </div>
        <Sentence adaptation={adaptation} verdict={verdict} opened={opened} />
        {assumed !== undefined && <p class="soft">{sayCount('assumedServings', assumed)}</p>}
      </div>
      {figures && <VerdictLoaf figures={figures} groups={groups} untold={untold} />}
      <SourcePanel opened={opened} adaptation={adaptation} />
    </section>
  );
}
