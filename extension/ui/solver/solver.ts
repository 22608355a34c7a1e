/** The worker of this page; where none can be had, recipes are worked out in the page once it is drawn. */
import { afterPaint } from '../hooks/after-paint.ts';
import { type Ask, newestQuestion } from './newest-question.ts';
import { type Answer, answerTo, type Question } from './questions.ts';
import { solverThread } from './solver-thread.ts';

const here = (question: Question): Promise<Answer> =>
  new Promise((done) => void afterPaint(() => done(answerTo(question))));

/** One question of a worker. @throws {Error} when its script does not run. */
const by = (worker: Worker, question: Question): Promise<Answer> =>
  new Promise((done, failed) => {
    worker.onmessage = ({ data }: MessageEvent<Answer>) => done(data);
    worker.onerror = (event) => failed(new Error(event.message || 'the worker does not run'));
    worker.postMessage(question);
  });

let worker = solverThread;

async function work(question: Question): Promise<Answer> {
  if (!worker) return here(question);
  try {
    return await by(worker, question);
  } catch (error) {
    console.error(error);
    worker = null;
    return here(question);
  }
}

/** Works out the newest question; what was asked before it and has not begun is left. */
export const ask: Ask<Question, Answer> = newestQuestion(work);
