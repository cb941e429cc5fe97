import type { Reporter, TestModule } from 'vitest/node';

/** Prints `N passed, N failed` as the very last line of a run, for whoever reads only that. */
export const closingLine: Reporter = {
  onTestRunEnd(modules: readonly TestModule[], unhandled: readonly unknown[]): void {
    const count = { passed: 0, failed: unhandled.length, skipped: 0, pending: 0 };
    for (const module of modules) {
      let failures = 0;
      for (const test of module.children.allTests()) {
        const { state } = test.result();
        count[state] += 1;
        if (state === 'failed') failures += 1;
      }
      // A file that could not be loaded, or whose set-up failed, has failed although none of its tests did.
      if (module.state() === 'failed' && failures === 0) count.failed += 1;
    }
    const skipped = count.skipped + count.pending;
    // Only then is it last: the default reporter and the closing of the browser may still write.
    process.once('exit', () => {
      process.stdout.write(
        `${count.passed} passed, ${count.failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}\n`,
      );
    });
  },
};
