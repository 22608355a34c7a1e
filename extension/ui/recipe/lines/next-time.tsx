/** After a correction: whether other recipes should take this name for the same food. */
import { aliasName } from '../../../store/kept/aliases.ts';
import type { Names } from '../../hooks/use-names.ts';
import { foodWord } from '../../words/food-words.ts';
import { say } from '../../words/say.ts';

interface Props {
  /** The name as the line has it. */
  name: string;
  food: { id: string; name: string };
  names: Names;
}

export function NextTime({ name, food, names }: Props) {
  const called = foodWord(food.id, food.name);
  if (aliasName(name) === '') return null;
  const kept = names.meant(name)?.foodId === food.id;
  return (
    <div class="next-time" role="status">
      {kept && <span key="said">{say('nextTimeMeans', aliasName(name), called)} </span>}
      {kept ? (
        <button key="act" type="button" class="button bare" onClick={() => names.forget(name)}>
          {say('forgetThis')}
        </button>
      ) : (
        <button
          key="act"
          type="button"
          class="button bare"
          onClick={() => names.remember(name, food)}
        >
          {say('rememberMeans', aliasName(name), called)}
        </button>
      )}
    </div>
  );
}
