/**
 * What the app has to say that belongs to no field: a file that could not be opened, storage that is blocked. Notices stand beside
 * the work and never stop it; the person puts them away.
 */
import { useStore } from 'zustand/react';
import { createStore } from 'zustand/vanilla';

export interface Notice {
  /** A newer notice of the same name takes the older one's place. */
  readonly name: string;
  readonly kind: 'fault' | 'note';
  readonly title: string;
  readonly sentences: readonly string[];
  /** Something the person may do about it. */
  readonly action?: { readonly label: string; readonly run: () => void };
}

interface NoticeState {
  readonly notices: readonly Notice[];
}

export const noticeStore = createStore<NoticeState>()(() => ({ notices: [] }));

export function useNotices(): readonly Notice[] {
  return useStore(noticeStore, (state) => state.notices);
}

/** Shows a notice, below those that are there. */
export function notify(notice: Notice): void {
  noticeStore.setState(({ notices }) => ({ notices: [...without(notices, notice.name), notice] }));
}

/** Takes a notice away; nothing happens when it is gone already. */
export function dismiss(name: string): void {
  noticeStore.setState(({ notices }) => ({ notices: without(notices, name) }));
}

function without(notices: readonly Notice[], name: string): readonly Notice[] {
  return notices.filter((notice) => notice.name !== name);
}
