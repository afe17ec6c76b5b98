/** Half a page for the next colleague, row by row. */
import { describe, expect, it } from 'vitest';
import { renderTicket } from '../../../src/explain/render/ticket.js';
import {
  fullReport,
  madeCause,
  madeEvidence,
  madeReport,
  madeStep,
  madeTold,
  madeUnknown,
} from '../madeReport.js';

/** Rows as `label: text`; a row without a label of its own as `: text`. */
const rows = (changes: Parameters<typeof madeReport>[0] = {}): string[] =>
  renderTicket(madeReport(changes), { width: 400 })
    .trimEnd()
    .split('\n')
    .slice(3)
    .map((line) => line.replace(/^ {2}(\S+(?: \S+)*)? {2,}/, (_, label = '') => `${label}: `));
const row = (label: string, changes: Parameters<typeof madeReport>[0] = {}): string[] =>
  rows(changes).filter((line) => line.startsWith(`${label}: `));

describe('the ticket', () => {
  it('says of a case of which nothing is known that nothing is', () => {
    expect(rows()).toEqual([
      'Complaint: none told',
      'Verdict: The center comes late. Likely, about 80%.',
      'Told: nothing yet',
      'Tried: nothing yet',
    ]);
  });
  it('has its rows in the order in which a colleague asks', () => {
    const labels = renderTicket(fullReport()).match(/^ {2}[A-Z][a-z]+(?: words)?(?= {2})/gm);
    expect(labels?.map((label) => label.trim())).toEqual([
      'In words',
      'Complaint',
      'Verdict',
      'Evidence',
      'Told',
      'Tried',
      'Next',
      'Open',
      'Clash',
      'Notes',
    ]);
    expect(renderTicket(fullReport())).toMatch(/^Center loudspeaker audit: Near sofa\n/);
    expect(
      renderTicket(fullReport(), { width: 40 })
        .split('\n')
        .every((line) => line.length <= 40),
    ).toBe(true);
  });
  it('quotes the owner on one line, and names complaints and what was tried', () => {
    expect(row('In words', { words: 'one\n\n  two' })).toEqual(['In words: “one two”']);
    const complaints = [{ title: 'hollow voice' }, { title: 'hum' }] as never;
    expect(row('Complaint', { complaints })).toEqual(['Complaint: Hollow voice and hum.']);
    expect(row('Tried', { tried: ['Turn it', 'Move it'] })).toEqual(['Tried: Turn it and Move it.']);
  });
  it('has home tests that were done in a row of their own, so that nobody asks for them again', () => {
    const told = [
      madeTold('obstacle', 'clear view'),
      madeTold('testPhantom', 'gone'),
      madeTold('triedTrim', 'louder'),
      madeTold('testTape', 'not known', 'not known'),
    ];
    expect(row('Tested', { told })).toEqual([
      'Tested: Label of testPhantom: gone (measured); Label of triedTrim: louder (measured).',
    ]);
    expect(row('Told', { told })).toEqual(['Told: Label of obstacle: clear view (measured).']);
    expect(row('Tried', { told })).toEqual(['Tried: no remedy yet']);
    expect(row('Tested', { told: told.slice(0, 1) })).toEqual([]);
  });
  it('has the three strongest lines of evidence of the leader, and no silent ones', () => {
    const evidence = [
      madeEvidence('Silent.', { speaks: 'neither' }),
      madeEvidence('One.'),
      madeEvidence('Two.', { speaks: 'against', weightText: 'a hint, against it' }),
      madeEvidence('Three.'),
      madeEvidence('Four.'),
    ];
    const causes = [
      madeCause('aim', { evidence: [madeEvidence('Other.')] }),
      madeCause('delay', { evidence }),
    ];
    const text = rows({ causes }).join('\n');
    expect(text).toContain(
      'Evidence: One. (a hint, for it)\n: Two. (a hint, against it)\n: Three. (a hint, for it)\nTold',
    );
  });
  it('tells first the answers that the leader rests on, six at most, and counts the others', () => {
    const facts = [
      'centerCount',
      'seatCount',
      'seating',
      'upmixUse',
      'earHeight',
      'clapRing',
      'seatDistance',
    ] as const;
    const told = facts.map((fact) => madeTold(fact, 'x'));
    const causes = [
      madeCause('aim', { evidence: [madeEvidence('a', { facts: ['seatCount'] })] }),
      madeCause('delay', { evidence: [madeEvidence('b', { facts: ['seatDistance'] })] }),
    ];
    const words = (names: readonly string[]) =>
      names.map((name) => `abel of ${name}: x (measured)`).join('; L');
    expect(row('Told', { causes, told })).toEqual([
      `Told: L${words(['seatDistance', ...facts.slice(0, 5)])}; 1 more.`,
    ]);
    expect(row('Told', { causes, told: told.slice(-2) })).toEqual([
      `Told: L${words(['seatDistance', 'clapRing'])}.`,
    ]);
    expect(row('Told', { causes, told: told.slice(1) })).toEqual([
      `Told: L${words(['seatDistance', ...facts.slice(1, 6)])}.`,
    ]);
  });
  it('does not tell what is not known, but counts it', () => {
    const open = madeTold('upmixUse', 'not known', 'not known');
    expect(row('Told', { told: [open, madeTold('seating', 'a row')] })).toEqual([
      'Told: Label of seating: a row (measured); 1 more.',
    ]);
    expect(row('Told', { told: [open] })).toEqual(['Told: nothing yet']);
  });
  it('has two next steps, each with its cautions', () => {
    const plan = [
      madeStep('Turn it', { cautions: ['Unplug it.', 'Two people.'] }),
      madeStep('Move it'),
      madeStep('Leave it'),
    ];
    expect(rows({ plan }).slice(4)).toEqual([
      'Next: Turn it (5 minutes, free) Caution: Unplug it. Two people.',
      ': Move it (5 minutes, free)',
    ]);
  });
  it('has three open questions with their minutes, every clash, and two notes on a line each', () => {
    const changes = {
      unknown: ['ear height', 'b', 'c', 'd'].map((label) => madeUnknown(label)),
      contradictions: [{ text: 'Both.' }, { text: 'Neither.' }] as never,
      notes: ['one\ntwo', 'three', 'four'],
    };
    expect(rows(changes).slice(4)).toEqual([
      'Open: Ear height (2 minutes)',
      ': B (2 minutes)',
      ': C (2 minutes)',
      'Clash: Both.',
      ': Neither.',
      'Notes: one two',
      ': three',
    ]);
  });
});
