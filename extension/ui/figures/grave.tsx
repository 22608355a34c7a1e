/** What of the cautions is grave: told in one line under the verdict, and marked where it lies folded. */
import type { Adaptation } from '../../../engine/model.ts';
import { Icon } from '../controls/icon.tsx';
import { say } from '../words/say.ts';

/** A fall the engine calls large: insulin or tablets may be too much for what is eaten. */
const LARGE_FALL = 'MUCH_FEWER_CARBS_HYPO';
const HYPO = new Set([LARGE_FALL, 'FEWER_CARBS_HYPO']);
/** The others that may put somebody in danger. Own choice. */
const GRAVE = new Set(['SGLT2_KETOACIDOSIS', 'NOT_WITHOUT_CARE_TEAM', 'KIDNEYS', 'BITTER_KERNELS']);

/** The line of a large fall, or null where there is none. */
export function graveText({ cautions }: Pick<Adaptation, 'cautions'>): string | null {
  const large = cautions.find(({ code }) => code === LARGE_FALL);
  return large ? say('graveFall', large.figures?.fall ?? '') : null;
}

/** The word for the grave things inside 'What to mind', or '' where there are none. */
export function graveMark({ cautions }: Pick<Adaptation, 'cautions'>): string {
  if (cautions.some(({ code }) => HYPO.has(code))) return say('graveHypo');
  return cautions.some(({ code }) => GRAVE.has(code)) ? say('graveOther') : '';
}

export function GraveLine({ adaptation }: { adaptation: Adaptation }) {
  const text = graveText(adaptation);
  if (text === null) return null;
  return (
    <p class="grave">
      <Icon name="warning" />
      <span>{text}</span>
    </p>
  );
}
