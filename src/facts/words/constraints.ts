/** What owners say must not be done in their home, and that it is settled. */
import type { ConstraintId } from '../constraints.js';
import type { Phrases } from './lexicon.js';

export const constraintWords: Readonly<Record<ConstraintId, Phrases>> = {
  'no-purchase': `not|without .. buy|buying|spend|spending .. anything|things|new|money|more|another|it; no budget|money; no new purchases; budget is zero|nothing; without spending; rather not buy; cannot afford`,
  'no-holes': `not|no|cannot .. drill|drilling|holes; rent|rented|rental .. no|not .. holes; no screws in the wall; landlord`,
  'cannot-stay-raised': `cannot|not stay|remain .. up|raised|there|high; stool|stand|crate .. must|has to go; cannot .. raise|raised|higher`,
  'center-stays': `center|speaker|it has to|must stay .. there|where; cannot .. move .. center; no other place for .. center|it; center .. nowhere else|else to; no other place`,
  'mains-stay': `@mains|towers .. cannot .. move|moved; cannot .. move .. @mains; @mains have to|must stay`,
  'furniture-stays': `furniture|cabinet|sideboard .. stays|must stay|has to stay; cannot .. move|change .. furniture|cabinet|sideboard; wife .. not allow`,
  'seats-stay': `sofa|seats|chairs .. cannot .. move|moved; cannot .. move .. sofa|seats|chairs; sofa .. must|has to stay`,
  'screen-stays': `television|screen|projector .. cannot .. move|moved|lower; cannot .. move|lower .. television|screen; television|screen .. must|has to stay`,
};

/** Denied, it is not settled. */
export const SOLVED: Phrases = `problem solved; solved; case closed; all sorted; issue fixed|resolved|gone for good; thread closed`;
