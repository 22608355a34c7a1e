/** What the page promises of its dish: kept as a rule, lifted by the user. */
import type { Adaptation, Goals, KeptPromise } from '../../../engine/model.ts';
import { type MessageKey, say } from '../words/say.ts';

const WORDS: Record<KeptPromise['promise'], MessageKey> = {
  vegan: 'promiseVegan',
  vegetarian: 'promiseVegetarian',
  'gluten-free': 'promiseGlutenFree',
  'dairy-free': 'promiseDairyFree',
  'egg-free': 'promiseEggFree',
  'nut-free': 'promiseNutFree',
  'soy-free': 'promiseSoyFree',
  'grain-free': 'promiseGrainFree',
  paleo: 'promisePaleo',
  AIP: 'promiseAip',
  'low-FODMAP': 'promiseLowFodmap',
  halal: 'promiseHalal',
  kosher: 'promiseKosher',
};

export const promiseWord = ({ promise }: KeptPromise): string => say(WORDS[promise]);

interface Props {
  adaptation: Adaptation;
  goals: Goals;
  onGoals(goals: Partial<Goals>): void;
}

export function PagePromises({ adaptation, goals, onGoals }: Props) {
  const { promises } = adaptation.plan;
  if (promises.length === 0) return null;
  const { liftedPromises } = goals;
  return (
    <fieldset class="boxes">
      <legend>{say('promisesLegend')}</legend>
      {promises.map((one) => (
        <label key={one.promise} class="tick">
          <input
            type="checkbox"
            checked={!liftedPromises.includes(one.promise)}
            onChange={({ currentTarget }) => {
              const others = liftedPromises.filter((name) => name !== one.promise);
              onGoals({
                liftedPromises: currentTarget.checked ? others : [...others, one.promise],
              });
            }}
          />
          <span>
            {promiseWord(one)} <span class="soft">“{one.said}”</span>
          </span>
        </label>
      ))}
    </fieldset>
  );
}
