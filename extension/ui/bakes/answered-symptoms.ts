/** Which faults of the last bake are answered with a proposal. */
import type { Bake } from '../../store/records.ts';

/** What moves from day to day by itself: told of in fewer bakes than this it is no pattern. Own choice. */
const BAKES_NEEDED: Record<string, number> = { glucose: 2 };

type Told = Pick<Bake, 'symptoms'>;

const timesTold = (bakes: readonly Told[], symptom: string): number =>
  bakes.filter(({ symptoms }) => symptoms.includes(symptom)).length;

const needed = (symptom: string): number => BAKES_NEEDED[symptom] ?? 1;

/** Bakes latest first, of one dish; the symptoms of the latest that were told often enough. */
export const answeredSymptoms = (bakes: readonly Told[]): string[] =>
  (bakes[0]?.symptoms ?? []).filter((one) => timesTold(bakes, one) >= needed(one));

/** Whether the latest bake tells of something that waits for another bake to tell of it too. */
export const waitsForAnother = (bakes: readonly Told[]): boolean =>
  (bakes[0]?.symptoms ?? []).some((one) => timesTold(bakes, one) < needed(one));
