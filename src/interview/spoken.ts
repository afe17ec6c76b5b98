/** A question as it is said on the phone: the question, how to find out in a breath, the answer said back. */
import { buildReport } from '../explain/report.js';
import { minutesText, sentence } from '../explain/words.js';
import { type FactId, factSpec } from '../facts/catalog.js';
import type { ComplaintId } from '../facts/complaints.js';
import type { Audit } from '../reasoning/audit.js';

/** Words that fit into a breath (measure of the catalog: a question has at most 25). */
const BREATH_WORDS = 25;
/** More lines than this cannot be kept in mind when they are read out. */
export const MOST_SPOKEN = 6;

/** A long list said in two steps: what the lines have in common, then the few of one kind. */
export interface SpokenGroup {
  readonly say: string;
  readonly values: readonly string[];
}

const COMPLAINT_GROUPS: readonly { readonly say: string; readonly values: readonly ComplaintId[] }[] = [
  {
    say: 'hard to understand',
    values: [
      'voice-unclear',
      'voice-unclear-off-side',
      'voice-unclear-back-row',
      'voice-unclear-everywhere',
      'whispers-lost-effects-loud',
    ],
  },
  {
    say: 'in the wrong place',
    values: [
      'image-collapses-to-center',
      'no-middle',
      'gaps-between-speakers',
      'voice-low-or-high',
      'voice-pulled-aside',
      'voice-from-behind',
      'image-follows-head',
    ],
  },
  {
    say: 'a wrong tone: dull, boomy, hollow or thin',
    values: [
      'voice-changes-tone',
      'dull',
      'boomy',
      'boxy',
      'hollow',
      'thin',
      'harsh',
      'small-and-lifeless',
      'weak-bass',
      'swishes-with-head-movement',
    ],
  },
  { say: 'too quiet, too loud or missing', values: ['voice-too-quiet', 'voice-too-loud', 'voice-missing'] },
  {
    say: 'a noise, an echo or lips out of step',
    values: ['echo', 'distorts-when-loud', 'rattles', 'out-of-step-with-picture'],
  },
  { say: 'nothing wrong, two channels are liked better', values: ['just-prefer-two-channels'] },
];

const LAYOUT_GROUPS: readonly SpokenGroup[] = [
  {
    say: 'one cone or two in one place, with the tweeter above or inside',
    values: ['coaxial', 'vertical-two-way', 'horizontal-two-way', 'full-range'],
  },
  {
    say: 'a cone on each side and the tweeter between them',
    values: ['mid-tweeter-mid', 'nested-mid-tweeter-mid', 'two-and-a-half-way', 'woofer-mid-tweeter-woofer'],
  },
  {
    say: 'two tweeters or two boxes',
    values: ['tweeter-mid-mid-tweeter', 'tweeter-mid-tweeter', 'paired-boxes'],
  },
];

const CHANGE_GROUPS: readonly SpokenGroup[] = [
  { say: 'wires, plugs or a link', values: ['center-wires', 'all-unplugged', 'wireless'] },
  { say: 'a loudspeaker', values: ['center-box', 'mains', 'subwoofer'] },
  { say: 'the receiver or its settings', values: ['receiver', 'trim', 'mode', 'reset'] },
  { say: 'furniture, rugs or seats', values: ['furniture-center', 'soft-things', 'seats'] },
  { say: 'the screen or the display', values: ['screen', 'display'] },
  { say: 'several things, or something else', values: ['several', 'other'] },
];

const GROUPS: Readonly<Record<string, readonly SpokenGroup[]>> = {
  complaints: COMPLAINT_GROUPS,
  centerLayout: LAYOUT_GROUPS,
  changedExactly: CHANGE_GROUPS,
};

/** The first step of a long list; undefined where the list is read out as it is. */
export function spokenGroups(topic: string, values: readonly string[]): readonly SpokenGroup[] | undefined {
  const groups = GROUPS[topic];
  if (!groups || values.length <= MOST_SPOKEN) return undefined;
  const rest = values.filter((value) => !groups.some((group) => group.values.includes(value)));
  return rest.length === 0 ? groups : [...groups, { say: 'something else', values: rest }];
}

/** The verdict as it is said to a caller: what it is, how sure, what to do first and how long that takes. */
export function spokenVerdict(audit: Audit): string {
  const { verdict, plan, solvedBy } = buildReport(audit);
  if (solvedBy) return `${sentence(verdict.headline)} Leave everything as it is now.`;
  const [step] = plan;
  const what = verdict.undecided
    ? `I cannot tell for certain yet. It may be one of these: ${verdict.contenders.map(({ title }) => title.charAt(0).toLowerCase() + title.slice(1)).join('; or ')}.`
    : `What is wrong is most likely this: ${sentence(verdict.headline)} I am ${sureText(verdict.confidence)} sure.`;
  if (!step) return what;
  const first = step.kind === 'question' ? 'One question would help most' : 'What to do first';
  return [
    what,
    `${first}: ${sentence(step.title)}`,
    `It takes ${minutesText(step.minutes)}.`,
    ...step.cautions.slice(0, 1),
  ].join(' ');
}

/** "about 80%" of "likely, about 80%". */
const sureText = (confidence: string): string => confidence.split(', ')[1] ?? confidence;

/** How to find out, as many of its steps as fit into a breath. */
export function breathOf(id: FactId): string {
  const { findOut } = factSpec(id);
  const words = (text: string): number => text.split(/\s+/).length;
  const said: string[] = [];
  for (const step of findOut) {
    if (said.length > 0 && words([...said, step].join(' ')) > BREATH_WORDS) break;
    said.push(step);
  }
  return said.join(' ');
}
