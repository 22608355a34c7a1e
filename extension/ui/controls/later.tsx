/** A part of a page that is read in when it is first drawn, with the words that it may need. */
import { type ComponentType, h } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { learnEngineWords } from '../words/engine-words.ts';
import { say } from '../words/say.ts';
import { Message } from './message.tsx';
import { Working } from './working.tsx';

export function later<Props extends object>(
  read: () => Promise<ComponentType<Props>>,
): ComponentType<Props> {
  let part: ComponentType<Props> | null = null;
  const readIn = async () => {
    const [found] = await Promise.all([read(), learnEngineWords()]);
    part = found;
  };
  return function Later(props: Props) {
    const [, setDone] = useState(part !== null);
    const [failed, setFailed] = useState(false);
    useEffect(() => {
      if (part === null) {
        readIn().then(
          () => setDone(true),
          () => setFailed(true),
        );
      }
    }, []);
    if (part) return h(part, props);
    return failed ? (
      <Message title={say('reloadPage')} alert />
    ) : (
      <Working title={say('opening')} />
    );
  };
}
