import type { CureCase } from '../checks/cureInhibition';
import { CHECK_FIGURES } from '../checks/figures';
import type { Poison } from '../checks/surfaces';
import { amount, type Sentence, type Values } from './sentence';

/** What stops or spoils the cure, as the subject of a sentence. */
const POISON_WORDS: Readonly<Record<Poison, string>> = {
  sulfur: 'sulfur',
  tin: 'the tin in condensation silicone',
  amines: 'amines of epoxy that has not cured through',
  rubber: 'what rubber is cured with',
  resin: 'print resin that has not cured through',
  'resins of wood': 'what wood gives off',
  paint: 'what some paints and sealers give off',
  platinum: 'fresh addition silicone underneath',
};

const PATCH_TEST =
  'Patch test: a spot of mixed silicone on a place that does not show, or on a scrap prepared alike; wait out the cure. If it stays sticky where it touches, do not pour.';

export const CURE_WORDS: Readonly<Record<CureCase, (v: Values) => Sentence>> = {
  harmless: (v) => ({
    text:
      v.cure === 'condensation'
        ? `The poisons of addition cure do not stop condensation cure: ${surface(v)} is no hindrance.`
        : `${capital(surface(v))} is not among the known poisons of addition cure.`,
    hint: `A new brand or a new lot still wants a patch test. ${PATCH_TEST}`,
  }),
  'patch cured': (v) => ({
    text: `${stopper(v)} on ${surface(v)}; your patch test cured.`,
    hint: `Pour on the same surface, prepared alike, with the same lots${onSilicone(v) ? ', and only if the patch lifted off clean' : ''}.`,
  }),
  'silicone on silicone': (v) => ({
    text: `${capital(v.cure)} silicone cures on ${surface(v)}, but bonds to it for good.`,
    hint: 'Put on a release made for silicone on silicone, every place of it, and try it on a small patch.',
  }),
  'some do': (v) => ({
    text: `${stopper(v)} on ${surface(v)}: some of it does, some does not.`,
    hint: `${PATCH_TEST} If it does: a barrier coat and a new test, ${otherSilicone(v)}.`,
  }),
  'stopper behind a dry coat': (v) => ({
    text: `${stopper(v)} on ${surface(v)}. The barrier coat is dry, but no patch test says that it holds.`,
    hint: PATCH_TEST,
  }),
  'stopper, patch cured': (v) => ({
    text: `${stopper(v)} on ${surface(v)}. Your patch test cured without a barrier coat; one spot does not speak for every place.`,
    hint: `Put on a barrier coat and test again, ${otherSilicone(v)}, or test where the surface differs.`,
  }),
  'coat not dry': (v) => ({
    text: `The barrier coat over ${surface(v)} has dried ${amount(v.dryMin, 3)} of ${amount(v.limitMin)} min.`,
    hint: `Wait another ${amount(Number(v.limitMin) - Number(v.dryMin), 3)} min at least, until it is dry all through, then a patch test.`,
  }),
  'stopper, bare': (v) => ({
    text: `${stopper(v)} on ${surface(v)}: the mold would stay sticky where it touches the sculpt, often less than ${amount(CHECK_FIGURES.inhibitedSkin.value)} mm deep, which is all of its detail.`,
    hint: `Do not pour. Put on a barrier coat of acrylic or shellac, let it dry ${amount(CHECK_FIGURES.barrierDry.value)} min or more and make a patch test, ${otherSilicone(v)}.`,
  }),
};

/** "Sulfur stops addition cure", or "can stop" where only some of the kind do. */
function stopper(v: Values): string {
  const poison = POISON_WORDS[v.by as Poison];
  return `${capital(poison)} ${v.risk === 'may' ? 'can stop' : 'stops'} ${v.cure} cure`;
}

/** What an answer would be about, for a check that still waits for facts: "Sulfur stops addition cure on sulfur clay." */
export const riskWords = (v: Values): string | undefined =>
  v.by === undefined ? undefined : `${stopper(v)} on ${surface(v)}.`;

const onSilicone = (v: Values): boolean => String(v.surface).endsWith('silicone');

/** Another silicone is a way out: the other cure, over silicone that of its own kind, which bonds without a release. */
const otherSilicone = (v: Values): string =>
  `or take ${v.cure === 'addition' ? 'condensation' : 'addition'} cure${onSilicone(v) ? ' with a release for silicone on silicone, as few coats hold on silicone' : ''}`;

const SURFACE_WORDS: Readonly<Record<string, string>> = {
  'resin print': 'a resin print',
  'printed filament': 'a filament print',
  'painted or sealed': 'a painted or sealed surface',
};

const surface = (v: Values): string => SURFACE_WORDS[String(v.surface)] ?? String(v.surface);

const capital = (words: number | string | undefined): string => {
  const text = String(words);
  return text.charAt(0).toUpperCase() + text.slice(1);
};
