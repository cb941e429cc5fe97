import { useEffect } from 'react';
import { SHEET_STYLE } from '../../../geometry/sheet/sheet-style.ts';

/** Puts the sheet's own style on the page while the sheet is shown. Built as an object: the content policy refuses written styles. */
export function useSheetStyle(): void {
  useEffect(() => {
    const style = new CSSStyleSheet();
    style.replaceSync(SHEET_STYLE);
    document.adoptedStyleSheets.push(style);
    return () => {
      document.adoptedStyleSheets = document.adoptedStyleSheets.filter((known) => known !== style);
    };
  }, []);
}
