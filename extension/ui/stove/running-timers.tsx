/** The timers that run or ring, each with its name. */
import type { StoveTimer } from '../../store/working/stove.ts';
import '../styles/timers.css';
import { Icon } from '../controls/icon.tsx';
import { say } from '../words/say.ts';
import { clockText, secondsLeft } from './timers.ts';

interface Props {
  timers: readonly StoveTimer[];
  now: number;
  onStop(id: string): void;
}

/** What rings is told to those who hear the page; the seconds that pass are not. */
function Ringing({ timers, now }: Omit<Props, 'onStop'>) {
  const names = timers.filter((one) => secondsLeft(one, now) === 0).map(({ name }) => name);
  return (
    <p class="hidden" role="alert">
      {names.map((name) => say('timerDone', name)).join(' ')}
    </p>
  );
}

export function RunningTimers({ timers, now, onStop }: Props) {
  return (
    <>
      <Ringing timers={timers} now={now} />
      <ul class="timers" aria-label={say('timers')}>
        {timers.map((timer) => {
          const left = secondsLeft(timer, now);
          return (
            <li key={timer.id} class={left === 0 ? 'timer timer-rings' : 'timer'}>
              <Icon name="clock" />
              <span class="timer-words">
                <span>{timer.name}</span>
                <b>{left === 0 ? say('timeIsUp') : clockText(left)}</b>
              </span>
              <button type="button" class="button" onClick={() => onStop(timer.id)}>
                {say(left === 0 ? 'timerOff' : 'timerStop')}
                <span class="hidden">: {timer.name}</span>
              </button>
            </li>
          );
        })}
      </ul>
    </>
  );
}
