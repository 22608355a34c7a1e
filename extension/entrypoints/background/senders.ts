/** Who a message to the background is from. A script in a page may be in the hands of that page. */

/** The part of a browser's `MessageSender` that is looked at. */
export interface Sender {
  id?: string | undefined;
  url?: string | undefined;
}

/** True for the extension's scripts and pages, wherever they run; `own` is the extension's id. */
export const isOwnScript = ({ id }: Sender, own: string): boolean => id === own;

/** True for the extension's own pages; `root` is their address, with the slash at its end. */
export const isOwnPage = (sender: Sender, own: string, root: string): boolean =>
  isOwnScript(sender, own) && sender.url?.startsWith(root) === true;
