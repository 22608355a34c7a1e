/** Keeps the screen from going dark while the page is in sight. */
import { useEffect, useState } from 'preact/hooks';

/** True while the screen is held awake; false where the browser cannot or may not. */
export function useAwake(): boolean {
  const [awake, setAwake] = useState(false);
  useEffect(() => {
    let held: WakeLockSentinel | null = null;
    let left = false;
    const hold = async () => {
      if (document.visibilityState !== 'visible' || !('wakeLock' in navigator)) return;
      try {
        held = await navigator.wakeLock.request('screen');
        if (left) return void held.release();
        held.addEventListener('release', () => setAwake(false));
        setAwake(true);
      } catch {
        setAwake(false);
      }
    };
    void hold();
    document.addEventListener('visibilitychange', hold);
    return () => {
      left = true;
      document.removeEventListener('visibilitychange', hold);
      void held?.release();
    };
  }, []);
  return awake;
}
