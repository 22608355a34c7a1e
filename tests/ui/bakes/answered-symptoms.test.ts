import { describe, expect, it } from 'vitest';
import {
  answeredSymptoms,
  waitsForAnother,
} from '../../../extension/ui/bakes/answered-symptoms.ts';

const told = (...symptoms: string[]) => ({ symptoms });

describe('what the last bake asks for', () => {
  it('answers a fault of the dough at once', () => {
    expect(answeredSymptoms([told('too-wet')])).toEqual(['too-wet']);
    expect(waitsForAnother([told('too-wet')])).toBe(false);
  });

  it('answers a higher reading only when a second bake tells of it too', () => {
    expect(answeredSymptoms([told('glucose', 'too-wet')])).toEqual(['too-wet']);
    expect(waitsForAnother([told('glucose')])).toBe(true);
    const twice = [told('glucose'), told(), told('glucose')];
    expect(answeredSymptoms(twice)).toEqual(['glucose']);
    expect(waitsForAnother(twice)).toBe(false);
  });

  it('asks for nothing where the latest bake tells of nothing', () => {
    expect(answeredSymptoms([told(), told('glucose'), told('glucose')])).toEqual([]);
    expect(answeredSymptoms([])).toEqual([]);
  });
});
