import { describe, expect, it } from 'vitest';
import { newestQuestion } from '../../../extension/ui/solver/newest-question.ts';

/** Work that waits until it is told to be done. */
function slow() {
  const begun: string[] = [];
  const tellers: ((early: string) => void)[] = [];
  const done: ((answer: string) => void)[] = [];
  const ask = newestQuestion<string, string, string>((question, tell) => {
    begun.push(question);
    tellers.push(tell);
    return new Promise((end) => done.push(end));
  });
  const finish = async () => {
    done.shift()?.(`${begun.at(-1)}!`);
    await new Promise((next) => setTimeout(next));
  };
  const early = (text: string) => tellers.at(-1)?.(text);
  return { ask, begun, early, finish };
}

describe('questions asked one after the other', () => {
  it('are worked out one at a time, the newest of those that wait', async () => {
    const { ask, begun, finish } = slow();
    const answers: string[] = [];
    for (const question of ['1', '12', '125'])
      ask(question, { onAnswer: (answer) => answers.push(answer) });
    expect(begun).toEqual(['1']);
    await finish();
    expect(begun).toEqual(['1', '125']);
    await finish();
    expect(answers).toEqual(['1!', '125!']);
  });

  it('that are called off get no answer, and are not begun', async () => {
    const { ask, begun, finish } = slow();
    const answers: string[] = [];
    const callOff = ask('a', { onAnswer: (answer) => answers.push(answer) });
    callOff();
    const before = ask('b', { onAnswer: (answer) => answers.push(answer) });
    before();
    ask('c', { onAnswer: (answer) => answers.push(answer) });
    await finish();
    await finish();
    expect(begun).toEqual(['a', 'c']);
    expect(answers).toEqual(['c!']);
  });

  it('are taken up again after a rest', async () => {
    const { ask, finish } = slow();
    const answers: string[] = [];
    ask('a', { onAnswer: (answer) => answers.push(answer) });
    await finish();
    ask('b', { onAnswer: (answer) => answers.push(answer) });
    await finish();
    expect(answers).toEqual(['a!', 'b!']);
  });

  it('tell what is known before the answer, to who still asks', async () => {
    const { ask, early, finish } = slow();
    const heard: string[] = [];
    const hearer = {
      onAnswer: (answer: string) => heard.push(answer),
      onEarly: (text: string) => heard.push(text),
    };
    ask('a', hearer);
    early('a as it is');
    await finish();
    const callOff = ask('b', hearer);
    callOff();
    early('b as it is');
    await finish();
    expect(heard).toEqual(['a as it is', 'a!']);
  });
});
