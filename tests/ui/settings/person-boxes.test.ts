import { h } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, it } from 'vitest';
import { adaptRecipe } from '../../../engine/index.ts';
import { DEFAULT_GOALS, type Person } from '../../../engine/model.ts';
import { DEFAULT_PREFERENCES } from '../../../extension/store/prefs.ts';
import { PersonBoxes } from '../../../extension/ui/settings/person-boxes.tsx';
import { adaptedText } from '../adapted.ts';
import { type Drawn, drawn } from '../screen.ts';

let screen: Drawn | null = null;
afterEach(() => screen?.clear());

/** What is ticked by one press on each box whose words begin so. */
function ticked(...boxes: string[]): Person {
  let person: Person = DEFAULT_PREFERENCES.person;
  const onPerson = (next: Person) => {
    person = next;
  };
  const child = () => h(PersonBoxes, { person, onPerson });
  screen = drawn(child());
  for (const box of boxes) {
    void act(() => screen?.field(box).click());
    screen.draw(child());
  }
  return person;
}

/** Invented supper, all of whose carbohydrate is in what a vegetable can stand for. */
const BOWL =
  'Harbour Rice Bowl\n\nServes 4\n\nIngredients\n300 g rice\n500 g chicken breast\n30 g butter\n1 tsp salt\n\nMethod\n1. Boil the rice until soft.\n2. Fry the chicken in the butter.\n3. Serve the chicken over the rice.';

const { recipe } = adaptedText(BOWL);
const codes = (budgetG: number, person: Person): string[] =>
  adaptRecipe(
    recipe,
    { ...DEFAULT_GOALS, budgetG, way: 'within' as const },
    { person },
  ).cautions.map(({ code }) => code);

describe('what the user says of themselves', () => {
  it('is nothing until it is ticked', () => {
    expect(ticked()).toEqual({ sglt2: false, kidneyDisease: false, needsCarePlan: false });
  });

  it('brings the ketoacidosis line only where hardly any carbohydrate is left', () => {
    const flozin = ticked('I take tablets');
    expect(codes(4, flozin)).toContain('SGLT2_KETOACIDOSIS');
    expect(codes(4, DEFAULT_PREFERENCES.person)).not.toContain('SGLT2_KETOACIDOSIS');
    expect(codes(14, flozin)).not.toContain('SGLT2_KETOACIDOSIS');
  });

  it('brings the lines on kidneys and on care only to those they are for', () => {
    expect(codes(10, ticked('I have a kidney disease'))).toContain('KIDNEYS');
    expect(codes(10, ticked('Pregnancy'))).toContain('NOT_WITHOUT_CARE_TEAM');
    const none = codes(10, DEFAULT_PREFERENCES.person);
    expect(none).not.toContain('KIDNEYS');
    expect(none).not.toContain('NOT_WITHOUT_CARE_TEAM');
  });

  it('changes no plan', () => {
    const all = ticked('I take tablets', 'I have a kidney', 'Pregnancy');
    const goals = { ...DEFAULT_GOALS, budgetG: 8 };
    const { cautions: _, ...mine } = adaptRecipe(recipe, goals, { person: all });
    const { cautions: __, ...anyones } = adaptRecipe(recipe, goals);
    expect(mine).toEqual(anyones);
  });
});
