/** `on`: the screen stays lit. `waiting`: it will again once this page is in sight. `cannot`: this device or its battery does not allow it. */
export type AwakeState = 'on' | 'waiting' | 'cannot';

/** What is used of the device. */
export interface AwakeDevice {
  /** Asks for the light; rejects when it is refused. null where devices cannot do it at all. */
  readonly request: (() => Promise<AwakeLock>) | null;
  isInSight(): boolean;
  /** Calls back when the page comes into sight. @returns stops it */
  onSight(back: () => void): () => void;
}

export interface AwakeLock {
  release(): Promise<void>;
  addEventListener(name: 'release', told: () => void): void;
}

/**
 * Keeps the screen lit until stopped. The device takes its permission back whenever the page goes out of sight; it is asked for anew then.
 * @returns stops it
 */
export function keepAwake(tell: (state: AwakeState) => void, device: AwakeDevice = thisDevice()): () => void {
  const { request } = device;
  if (request === null) {
    tell('cannot');
    return () => {};
  }
  let lock: AwakeLock | null = null;
  let isStopped = false;
  let isAsking = false;

  const ask = async () => {
    if (isStopped || isAsking || lock !== null || !device.isInSight()) return;
    isAsking = true;
    try {
      const given = await request();
      if (isStopped) return void (await given.release());
      lock = given;
      given.addEventListener('release', () => {
        lock = null;
        if (!isStopped) tell('waiting');
      });
      tell('on');
    } catch {
      if (!isStopped) tell('cannot');
    } finally {
      isAsking = false;
    }
  };
  const stopWatching = device.onSight(() => void ask());
  void ask();
  return () => {
    isStopped = true;
    stopWatching();
    void lock?.release();
    lock = null;
  };
}

function thisDevice(): AwakeDevice {
  const { wakeLock } = navigator as Partial<Pick<Navigator, 'wakeLock'>>;
  return {
    request: wakeLock === undefined ? null : () => wakeLock.request('screen'),
    isInSight: () => document.visibilityState === 'visible',
    onSight(back) {
      document.addEventListener('visibilitychange', back);
      return () => document.removeEventListener('visibilitychange', back);
    },
  };
}
