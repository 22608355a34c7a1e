/** The time, looked at each second. */
import { useEffect, useRef, useState } from 'preact/hooks';

/** Milliseconds since 1970 UTC, a second fresh; `onLook` gets the look before and this one. */
export function useNow(onLook: (before: number, now: number) => void): number {
  const [now, setNow] = useState(() => Date.now());
  const look = useRef(onLook);
  look.current = onLook;
  useEffect(() => {
    let before = Date.now();
    const timer = setInterval(() => {
      const next = Date.now();
      look.current(before, next);
      before = next;
      setNow(next);
    }, 1000);
    return () => clearInterval(timer);
  }, []);
  return now;
}
