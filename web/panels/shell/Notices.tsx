import { Info, TriangleAlert, X } from 'lucide-react';
import { Button } from 'react-aria-components';
import { dismiss, type Notice, useNotices } from '../../files/notice-store.ts';
import { useEstimate } from '../../worker/estimate-client.ts';
import './Notices.css';

/** What the app has to say that belongs to no field. Stands beside the work and never stops it. */
export function Notices() {
  const notices = useNotices();
  const error = useEstimate((state) => state.error);
  return (
    <section className="notices" aria-label="Notices" aria-live="polite">
      {error !== null && (
        <Note
          notice={{
            name: 'error',
            kind: 'fault',
            title: 'The figures could not be worked out.',
            sentences: [error],
          }}
        />
      )}
      {notices.map((notice) => (
        <Note key={notice.name} notice={notice} onDismiss={() => dismiss(notice.name)} />
      ))}
    </section>
  );
}

function Note({ notice, onDismiss }: { readonly notice: Notice; readonly onDismiss?: () => void }) {
  const { kind, title, sentences, action } = notice;
  const Mark = kind === 'fault' ? TriangleAlert : Info;
  return (
    <div className="notice" data-kind={kind}>
      <Mark aria-hidden="true" />
      <div className="notice-words">
        <h2>{title}</h2>
        {sentences.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
        {action !== undefined && (
          <Button
            className="button"
            onPress={() => {
              onDismiss?.();
              action.run();
            }}
          >
            {action.label}
          </Button>
        )}
      </div>
      {onDismiss !== undefined && (
        <Button className="button button-bare" aria-label={`Put away: ${title}`} onPress={onDismiss}>
          <X aria-hidden="true" />
          Close
        </Button>
      )}
    </div>
  );
}
