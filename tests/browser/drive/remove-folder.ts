/** A browser that was told to end may write for a moment more: its profile is tried again until it is gone. */
import { rmSync } from 'node:fs';

export function removeFolder(folder: string | undefined): void {
  if (folder) rmSync(folder, { recursive: true, force: true, maxRetries: 20, retryDelay: 100 });
}
