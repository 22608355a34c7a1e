import { aliasName } from '../../store/aliases.ts';
import type { Names } from '../hooks/use-names.ts';

interface Props {
  /** The name as the line has it. */
  name: string;
  food: { id: string; name: string };
  names: Names;
}

/** After a correction: whether other recipes should take this name for the same food. */
export function NextTime({ name, food, names }: Props) {
  if (aliasName(name) === '') return null;
  const meant = names.meant(name);
  const kept = meant?.foodId === food.id;
  return (
    <div class="next-time" role="status">
      {kept && (
        <span key="said">
          Next time “{aliasName(name)}” means {food.name}.{' '}
        </span>
      )}
      {kept ? (
        <button key="act" type="button" onClick={() => names.forget(name)}>
          Forget this
        </button>
      ) : (
        <button key="act" type="button" onClick={() => names.remember(name, food)}>
          Remember for other recipes: “{aliasName(name)}” means {food.name}
        </button>
      )}
    </div>
  );
}
