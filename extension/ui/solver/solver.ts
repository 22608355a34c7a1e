/** The worker of this page; where none can be had, recipes are worked out in the page once it is drawn. */
import { afterPaint } from '../hooks/after-paint.ts';
import { type Ask, newestQuestion } from './newest-question.ts';
import type { Answer, AsItIs, Question, Told } from './questions.ts';

/** Worked out in the page: what that takes is large, and read in only when it comes to it. Never rejects. */
export async function answerHere(question: Question): Promise<Answer> {
  try {
    const { answerTo } = await import('./questions.ts');
    return answerTo(question);
  } catch (error) {
    console.error(error);
    return null;
  }
}

const here = (question: Question): Promise<Answer> =>
  new Promise((done) => void afterPaint(() => done(answerHere(question))));

/** One question of a worker. @throws {Error} when its script does not run. */
const by = (worker: Worker, question: Question, tell: (asItIs: AsItIs) => void): Promise<Answer> =>
  new Promise((done, failed) => {
    worker.onmessage = ({ data }: MessageEvent<Told>) =>
      data.kind === 'answer' ? done(data.answer) : tell(data.asItIs);
    worker.onerror = (event) => failed(new Error(event.message || 'the worker does not run'));
    worker.postMessage(question);
  });

/** The worker as soon as there is something to work out, or earlier where a page begins with it. */
async function solverThread(): Promise<Worker | null> {
  return (await import('./solver-thread.ts')).solverThread;
}

let broken = false;

async function work(question: Question, tell: (asItIs: AsItIs) => void): Promise<Answer> {
  const worker = broken ? null : await solverThread();
  if (!worker) return here(question);
  try {
    return await by(worker, question, tell);
  } catch (error) {
    console.error(error);
    broken = true;
    return here(question);
  }
}

/** Works out the newest question; what was asked before it and has not begun is left. */
export const ask: Ask<Question, Answer, AsItIs> = newestQuestion(work);
