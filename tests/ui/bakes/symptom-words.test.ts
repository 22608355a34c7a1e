import { afterEach, describe, expect, it } from 'vitest';
import { bakeSymptoms } from '../../../engine/index.ts';
import { FAMILIES } from '../../../engine/model.ts';
import { symptomWord } from '../../../extension/ui/bakes/symptom-words.ts';
import { speak } from '../../../extension/ui/words/say.ts';

afterEach(() => speak('en'));

const ALL = [
  ...new Map(
    FAMILIES.flatMap((family) => bakeSymptoms(family).map((one) => [one.id, { ...one, family }])),
  ).values(),
];

describe('what went wrong, in words', () => {
  it.each(ALL)('$id', ({ id, label, family }) => {
    expect(symptomWord(id, family)).toBe(label);
    speak('de');
    expect(symptomWord(id, family)).not.toBe(label);
  });
});
