import { describe, expect, it } from 'vitest';
import { asked, loadStories, replay, type Story } from '../../eval/replay.js';
import { EMPTY_BOOK, type FactBook } from '../../src/facts/book.js';
import type { FactId } from '../../src/facts/catalog.js';
import type { ComplaintId } from '../../src/facts/complaints.js';
import { auditSync } from '../../src/reasoning/audit.js';

const bookOf = (facts: Partial<Record<FactId, string>>, complaints: readonly ComplaintId[]): FactBook => ({
  ...EMPTY_BOOK,
  complaints,
  answers: new Map(
    Object.entries(facts).map(([id, value]) => [id as FactId, { value, how: 'recalled' as const }]),
  ),
});

/** A center of another family, told on asking only. */
const story: Story = {
  id: 'invented',
  hard: false,
  truth: ['timbre'],
  undecidable: false,
  told: bookOf({ centerPlacement: 'stand' }, ['voice-changes-tone']),
  all: bookOf({ centerFamily: 'unrelated', toneAcrossPan: 'thinner' }, ['dull']),
};

describe('a story replayed', () => {
  it('asks nothing that was told first, and answers what the full story knows', () => {
    const { interview } = replay(story);
    expect(interview.steps).not.toContain('centerPlacement');
    for (const id of interview.steps)
      expect(interview.audit.book.answers.get(id)).toEqual(story.all.answers.get(id) ?? { how: 'unknown' });
  });

  it('counts as had what the full story knows, of all that was put', () => {
    const found = replay(story);
    const { put, had } = asked(found);
    expect(put).toBe(found.interview.steps.length);
    expect(had).toBe(found.interview.steps.filter((id) => story.all.answers.has(id)).length);
    expect(found.unasked).toEqual(
      [...story.all.answers.keys()].filter((id) => !found.interview.steps.includes(id)),
    );
  });

  it('judges everything known with what was told first and then left out', () => {
    const joined = bookOf({ centerPlacement: 'stand', centerFamily: 'unrelated', toneAcrossPan: 'thinner' }, [
      'voice-changes-tone',
      'dull',
    ]);
    expect(replay(story).leaders[2]).toBe(auditSync(joined).ranking.leader);
  });

  it('reads all stories as sound cases', () => {
    const stories = loadStories();
    expect(stories).toHaveLength(40);
    for (const { undecidable, truth } of stories) expect(truth.length === 0).toBe(undecidable);
  });
});
