/** Works recipes out beside the page, so that typing there is never held up. */
import { answerTo, type Question } from './questions.ts';

addEventListener('message', ({ data }: MessageEvent<Question>) => postMessage(answerTo(data)));
