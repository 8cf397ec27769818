import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { isTool } from './notion-words.ts'
import { allWords, labelAt, placeOfKey, type SenseFacts } from './sense-facts.ts'

const smallParts = /\b(?:eyes?|noses?|beads?|bells?|pompoms?|sequins?|googly)\b/i
const instead = /\b(?:embroider|french knots?|sew(?:n)? (?:felt|eyes)|felt eyes|crochet(?:ed)? eyes|satin stitch)/i
const neverForBabies = /\b(?:rice|beans?|lentils?|pellets?|beads?|magnets?|batter(?:y|ies)|wire|bells?|googly)\b/i
const neverForToys = /\b(?:magnets?|batter(?:y|ies)|wire)\b/i

/**
 * Notions that careful patterns keep away from those who put things into their mouths: small parts without an embroidered way beside
 * them, and fillings that hurt when a seam opens. The cautions are printed either way; this asks for another choice.
 */
export function hazardInNotions(facts: SenseFacts): readonly Diagnostic[] {
  const { madeFor, materials } = facts.pattern
  if (madeFor !== 'baby' && madeFor !== 'toy' && madeFor !== 'pet') return []
  const offersOther = instead.test(allWords(facts))
  const whose = madeFor === 'toy' ? 'a toy' : madeFor === 'baby' ? 'a baby' : 'a pet'
  return (materials?.notions ?? []).flatMap(({ what }, index): readonly Diagnostic[] => {
    if (isTool(what)) return []
    const never = (madeFor === 'toy' ? neverForToys : neverForBabies).test(what)
    if (!never && (!smallParts.test(what) || offersOther)) return []
    return [{
      code: 'hazard-in-notions',
      message: never ? `\`${what}\` is listed for something that is made for ${whose}` : `\`${what}\` is listed for ${whose}, but the text offers no embroidered way`,
      primary: { span: placeOfKey(facts, `materials.notions.${index}.what`, `materials.notions.${index}`), text: never ? 'a hazard once a seam opens' : 'can come off and be swallowed' },
      secondary: labelAt(facts, 'made-for', `made for ${madeFor}`),
      note: never
        ? 'careful patterns put no rice, beans, pellets, magnets, batteries or wire into things for little ones or pets (common practice)'
        : 'small parts are banned in things for children under 3 years in the USA (16 CFR 1501), and soft toys count as such in Europe (EN 71-1), whatever the packet says; rules differ and change',
    }]
  })
}
