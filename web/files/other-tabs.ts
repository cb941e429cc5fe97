import { notify } from './notice-store.ts';

type Message = 'opened' | 'here-too';

/** Says it in both when the app is open in two tabs: each keeps its own job. @returns stops it */
export function watchOtherTabs(): () => void {
  if (typeof BroadcastChannel === 'undefined') return () => {};
  const channel = new BroadcastChannel('fettle');
  const send = (message: Message) => channel.postMessage(message);
  channel.onmessage = ({ data }: MessageEvent<Message>) => {
    if (data === 'opened') send('here-too');
    notify({
      name: 'other-tabs',
      kind: 'note',
      title: 'Fettle is open in another tab too.',
      sentences: ['Each tab keeps its own job. The one changed last is shown first the next time.'],
    });
  };
  send('opened');
  return () => channel.close();
}
