/** What the bakes taught, in one list: each with its bakes, each to be switched off. */
import { useId, useRef, useState } from 'preact/hooks';
import type { Lesson } from '../../../engine/index.ts';
import type { Adjustment } from '../../../engine/model.ts';
import { changeSwitch } from '../../store/kept/taught-kept.ts';
import { Fold } from '../controls/fold.tsx';
import type { Lessons } from '../hooks/use-lessons.ts';
import { toldHere } from '../words/engine-language.ts';
import { say, sayCount } from '../words/say.ts';
import { ToldSentence } from '../words/told-sentence.tsx';
import { lessonBakes, lessonText, type Named } from './lesson-text.ts';

interface Props {
  lessons: Lessons;
  /** The kept recipe on the screen, or null. */
  recipeId: string | null;
  /** Changes that faults of its bakes taught, as they were taken up. */
  accepted: readonly Adjustment[];
  onWithdraw(adjustment: Adjustment): void;
}

const isElsewhere = ({ of, subject }: Lesson, recipeId: string | null): boolean =>
  (of === 'dish-water' || of === 'dish-weight') && subject !== recipeId;

interface RowProps {
  lesson: Lesson;
  named: Named;
  lessons: Lessons;
}

function LessonRow({ lesson, named, lessons }: RowProps) {
  const id = useId();
  return (
    <li>
      <label class="tick">
        <input
          type="checkbox"
          checked={!lessons.off.includes(lesson.id)}
          aria-describedby={id}
          onChange={({ currentTarget }) => lessons.turn(lesson.id, currentTarget.checked)}
        />
        <span>{lessonText(lesson, named)}</span>
      </label>
      <p class="soft taught-from" id={id}>
        {lessonBakes(lesson, named)}
      </p>
    </li>
  );
}

function ChangeRow({
  lessons,
  recipeId,
  change,
  onWithdraw,
}: Omit<Props, 'accepted'> & { change: Adjustment }) {
  const id = useId();
  const name = changeSwitch(recipeId, change.id);
  return (
    <li>
      <label class="tick">
        <input
          type="checkbox"
          checked={!lessons.off.includes(name)}
          aria-describedby={id}
          onChange={({ currentTarget }) => lessons.turn(name, currentTarget.checked)}
        />
        <ToldSentence text={change.text} />
      </label>
      <p class="soft taught-from" id={id}>
        <ToldSentence text={change.why} />
      </p>
      <button type="button" class="button bare" onClick={() => onWithdraw(change)}>
        {say('withdraw')}
        <span class="hidden">{say('ofFood', toldHere(change.text).text)}</span>
      </button>
    </li>
  );
}

export function TaughtList({ lessons, recipeId, accepted, onWithdraw }: Props) {
  const [said, setSaid] = useState('');
  const head = useRef<HTMLHeadingElement>(null);
  const withdraw = (change: Adjustment) => {
    onWithdraw(change);
    setSaid(say('changeWithdrawn'));
    // The pressed button is gone now.
    head.current?.focus();
  };
  const named: Named = {
    foods: Object.fromEntries(lessons.own.map(({ id, name }) => [id, name])),
    facts: lessons.facts,
  };
  const here = lessons.lessons.filter((lesson) => !isElsewhere(lesson, recipeId));
  const elsewhere = lessons.lessons.filter((lesson) => isElsewhere(lesson, recipeId));
  const rows = (list: readonly Lesson[]) =>
    list.map((lesson) => (
      <LessonRow key={lesson.id} lesson={lesson} named={named} lessons={lessons} />
    ));
  const none = here.length + accepted.length + elsewhere.length === 0;
  return (
    <section class="taught" aria-labelledby="taught-title">
      <h2 id="taught-title" ref={head} tabIndex={-1}>
        {say('taughtTitle')}
      </h2>
      <p class="hidden" role="status">
        {said}
      </p>
      <p class="soft">{say(none ? 'taughtNone' : 'taughtHow')}</p>
      <ul class="taught-list">
        {accepted.map((change) => (
          <ChangeRow
            key={change.id}
            change={change}
            lessons={lessons}
            recipeId={recipeId}
            onWithdraw={withdraw}
          />
        ))}
        {rows(here)}
      </ul>
      {elsewhere.length > 0 && (
        <Fold title={sayCount('taughtElsewhere', elsewhere.length)} name="taught-elsewhere">
          {() => <ul class="taught-list">{rows(elsewhere)}</ul>}
        </Fold>
      )}
    </section>
  );
}
