/** What the changes cost, part by part: how far each moves from the original. */
import { type Adaptation, ClosenessPart } from '../../../engine/model.ts';
import { type MessageKey, say } from '../words/say.ts';

/** The parts of closeness in the words of the screen. */
export const PART_WORDS: Record<ClosenessPart, MessageKey> = {
  structure: 'partStructure',
  water: 'partWater',
  sweetness: 'partSweetness',
  fat: 'partFat',
  flavour: 'partFlavour',
};

/** How far apart in plain words, from 'the same' to 'very different'. Steps are own choice. */
export function apartWord(closeness: number): string {
  const away = 1 - closeness;
  if (away < 0.005) return say('apartNone');
  if (away < 0.1) return say('apartLittle');
  if (away < 0.25) return say('apartSome');
  return say(away < 0.5 ? 'apartMuch' : 'apartVery');
}

export function Closeness({ adaptation }: { adaptation: Adaptation }) {
  const { closenessParts, swaps } = adaptation.plan;
  const parts = ClosenessPart.options.flatMap((part) => {
    const share = closenessParts[part];
    return share === undefined ? [] : [{ part, share }];
  });
  if (swaps.length === 0 || parts.length === 0) return null;
  return (
    <section class="closeness">
      <h3>{say('howFar')}</h3>
      <dl class="pairs">
        {parts.map(({ part, share }) => (
          <div key={part}>
            <dt>{say(PART_WORDS[part])}</dt>
            <dd>{apartWord(share)}</dd>
          </div>
        ))}
      </dl>
      <p class="soft">{say('closenessNote')}</p>
    </section>
  );
}
