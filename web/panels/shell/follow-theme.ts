import { viewStore } from '../../view/view-store.ts';

/**
 * Keeps `data-theme` of the page at `light` or `dark`: the person's choice, or the system's while there is none.
 * Style sheets and the 3D view read it from there.
 */
export function followTheme(): void {
  const system = matchMedia('(prefers-color-scheme: dark)');
  const follow = () => {
    const { theme } = viewStore.getState();
    document.documentElement.dataset.theme = theme === 'system' ? (system.matches ? 'dark' : 'light') : theme;
  };
  viewStore.subscribe(follow);
  system.addEventListener('change', follow);
  follow();
}
