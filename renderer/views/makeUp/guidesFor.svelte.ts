import { studio } from '../../store/studio.svelte.ts';
import type { Guides } from '../../../src/worker/protocol.ts';

/** Guides of the chart for the make-up on the left. @param wanted the make-up once it is predicted, or null until then */
export const guidesFor = (wanted: () => string | null) => {
  let found = $state.raw<{ of: string; guides: Guides } | null>(null);
  $effect(() => {
    const of = wanted();
    // asked again with every new answer, since the layers may have changed
    if (of === null || !studio.results.predictions[of] || studio.results.resolution !== 'full') return;
    let current = true;
    void studio.results
      .guides(of)
      .then((guides) => {
        if (current) found = guides && { of, guides };
      })
      .catch(() => {
        if (current) found = null;
      });
    return () => (current = false);
  });
  return { of: (id: string): Guides | null => (found?.of === id ? found.guides : null) };
};
