/**
 * Saving from the popup. It may close at any moment and take an unfinished write with it, so the
 * background saves and answers when the transaction has ended.
 */
import * as z from 'zod';
import { Adaptation } from '../../../engine/model.ts';
import { say } from '../../ui/words/say.ts';
import type { Store } from '../db.ts';
import { storageMessage } from '../failure.ts';
import { saveRecipe } from '../kept/saved.ts';
import { Work } from '../records.ts';

export const SaveRequest = z.object({
  type: z.literal('save'),
  id: z.string().nullable(),
  work: Work.extend({ adaptation: Adaptation }),
});
export type SaveRequest = z.infer<typeof SaveRequest>;

export const SaveAnswer = z.discriminatedUnion('ok', [
  z.object({ ok: z.literal(true), id: z.string() }),
  z.object({ ok: z.literal(false), why: z.string() }),
]);
export type SaveAnswer = z.infer<typeof SaveAnswer>;

/** Saves what a message asks for. Never rejects. */
export async function answerSave(store: Store, message: unknown, now: number): Promise<SaveAnswer> {
  const request = SaveRequest.safeParse(message);
  if (!request.success) {
    const where = request.error.issues[0]?.path.join('.') ?? '';
    return { ok: false, why: say('notHandedOver', where) };
  }
  try {
    const saved = await saveRecipe(store, request.data.work, request.data.id, now);
    return { ok: true, id: saved.id };
  } catch (error) {
    return { ok: false, why: storageMessage(error) };
  }
}
