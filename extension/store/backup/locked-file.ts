/**
 * A file that only its passphrase opens, made with the browser's own cryptography. The key comes from the
 * passphrase by PBKDF2 with HMAC-SHA-256 (RFC 8018) in 600,000 rounds, as the OWASP Password Storage Cheat
 * Sheet recommends; the text is sealed with AES-GCM, a 256-bit key and a 96-bit nonce of its own (NIST SP
 * 800-38D). Salt and nonce are new for every file. There is no second key.
 */
import * as z from 'zod';

const FORMAT = 'crumbshift-locked';
const VERSION = 1;
const ROUNDS = 600_000;
/** A file that asks for more would keep the browser busy for minutes. Own choice. */
const MOST_ROUNDS = 5_000_000;
const SALT_BYTES = 16;
const NONCE_BYTES = 12;
/** Shorter ones are guessed: NIST SP 800-63B asks for eight characters at least. */
export const SHORTEST_PASSPHRASE = 8;

const Locked = z.object({
  format: z.literal(FORMAT),
  version: z.literal(VERSION),
  key: z.object({
    by: z.literal('PBKDF2-HMAC-SHA-256'),
    rounds: z.number().int().min(1).max(MOST_ROUNDS),
    salt: z.string(),
  }),
  seal: z.object({ by: z.literal('AES-256-GCM'), nonce: z.string() }),
  sealed: z.string(),
});
type Locked = z.infer<typeof Locked>;

type Bytes = Uint8Array<ArrayBuffer>;

/** Bytes turned into text at once; more would be too many arguments of one call. */
const CHUNK = 0x6000;

function toBase64(bytes: Bytes): string {
  const parts: string[] = [];
  // A multiple of three bytes a part, so that the parts join without padding between them.
  for (let at = 0; at < bytes.length; at += CHUNK)
    parts.push(btoa(String.fromCharCode(...bytes.subarray(at, at + CHUNK))));
  return parts.join('');
}

function fromBase64(text: string): Bytes {
  const binary = atob(text);
  const bytes = new Uint8Array(binary.length);
  for (let at = 0; at < binary.length; at += 1) bytes[at] = binary.charCodeAt(at);
  return bytes;
}

const bytesOf = (text: string): Bytes => new TextEncoder().encode(text);

/** The same passphrase typed on another keyboard is the same: composed and split letters are one. */
async function keyFrom(passphrase: string, salt: Bytes, rounds: number): Promise<CryptoKey> {
  const typed = bytesOf(passphrase.normalize('NFC'));
  const base = await crypto.subtle.importKey('raw', typed, 'PBKDF2', false, ['deriveKey']);
  return crypto.subtle.deriveKey(
    { name: 'PBKDF2', hash: 'SHA-256', salt, iterations: rounds },
    base,
    { name: 'AES-GCM', length: 256 },
    false,
    ['encrypt', 'decrypt'],
  );
}

/** What the seal covers beside the text, so that neither can be exchanged. */
const headOf = ({ format, version, key }: Pick<Locked, 'format' | 'version' | 'key'>): Bytes =>
  bytesOf(JSON.stringify([format, version, key.by, key.rounds, key.salt]));

/** The text as a file that only the passphrase opens. */
export async function lockText(text: string, passphrase: string): Promise<string> {
  const salt = crypto.getRandomValues(new Uint8Array(SALT_BYTES));
  const nonce = crypto.getRandomValues(new Uint8Array(NONCE_BYTES));
  const head = {
    format: FORMAT,
    version: VERSION,
    key: { by: 'PBKDF2-HMAC-SHA-256', rounds: ROUNDS, salt: toBase64(salt) },
  } as const;
  const sealed = await crypto.subtle.encrypt(
    { name: 'AES-GCM', iv: nonce, additionalData: headOf(head) },
    await keyFrom(passphrase, salt, ROUNDS),
    bytesOf(text),
  );
  const file: Locked = {
    ...head,
    seal: { by: 'AES-256-GCM', nonce: toBase64(nonce) },
    sealed: toBase64(new Uint8Array(sealed)),
  };
  return `${JSON.stringify(file, null, 1)}\n`;
}

/** True for a file of this kind, damaged or not. */
export const isLocked = (text: string): boolean =>
  text.slice(0, 200).includes(`"format": "${FORMAT}"`) ||
  text.slice(0, 200).includes(`"format":"${FORMAT}"`);

export type Unlocked = { ok: true; text: string } | { ok: false; why: 'damaged' | 'passphrase' };

/** A wrong passphrase and a changed file cannot be told apart. Never throws. */
export async function unlockText(file: string, passphrase: string): Promise<Unlocked> {
  let locked: Locked;
  let parts: { salt: Bytes; nonce: Bytes; sealed: Bytes };
  try {
    locked = Locked.parse(JSON.parse(file));
    parts = {
      salt: fromBase64(locked.key.salt),
      nonce: fromBase64(locked.seal.nonce),
      sealed: fromBase64(locked.sealed),
    };
  } catch {
    return { ok: false, why: 'damaged' };
  }
  try {
    const text = await crypto.subtle.decrypt(
      { name: 'AES-GCM', iv: parts.nonce, additionalData: headOf(locked) },
      await keyFrom(passphrase, parts.salt, locked.key.rounds),
      parts.sealed,
    );
    return { ok: true, text: new TextDecoder().decode(text) };
  } catch {
    return { ok: false, why: 'passphrase' };
  }
}
