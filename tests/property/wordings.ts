import type { Step } from '../support/naive-counter.ts'
import { oneOf, type Draw } from './random-rows.ts'

/** How a row is put in words. `plain` keeps to wordings that the trade reads in one way only. */
export interface Manner {
  readonly draw: Draw
  readonly plain: boolean
  readonly flat: boolean
  /** Only sc in the whole piece: `inc` and `dec` can mean nothing else. */
  readonly onlySc?: boolean
  /** Inside a repeat: a star there would be taken for the outer one. */
  readonly inRepeat?: boolean
}

const sts = (count: number): string => (count === 1 ? 'next st' : `next ${count} sts`)

/** A row's instructions in the trade's words. Every call may choose other words for the same row. */
export function wordsFor(steps: readonly Step[], manner: Manner): string {
  return steps.map((step) => wordsForStep(step, manner)).join(', ')
}

function wordsForStep(step: Step, manner: Manner): string {
  const { draw, plain, flat } = manner
  const end = flat ? oneOf(draw, ['across', 'to end']) : oneOf(draw, ['around', 'around', 'to end'])
  switch (step.step) {
    case 'work': {
      const { stitch, count } = step
      const ways = [`${stitch} in ${sts(count)}`]
      if (count > 1) ways.push(`${stitch} in each of next ${count} sts`)
      if (!plain && count > 1) ways.push(`${count} ${stitch}`, `${stitch} ${count}`)
      if (!plain && count === 1) ways.push(stitch)
      return oneOf(draw, ways)
    }
    case 'many': {
      const { stitch, of, count } = step
      const ways = [`${of} ${stitch} in ${count === 1 ? 'next st' : `each of next ${count} sts`}`]
      if (of === 2 && manner.onlySc && !plain) ways.push(count === 1 ? 'inc' : `inc in each of next ${count} sts`)
      if (of === 2 && !plain) ways.push(count === 1 ? `${stitch} inc` : `(2 ${stitch} in next st) ${count} times`)
      return oneOf(draw, ways)
    }
    case 'together': {
      const { stitch, over } = step
      const ways = [`${stitch}${over}tog`, `${stitch}${over}tog over next ${over} sts`]
      if (over === 2 && manner.onlySc && !plain) ways.push('dec', 'inv dec')
      return oneOf(draw, ways)
    }
    case 'skip':
      return oneOf(draw, step.count === 1 ? ['skip next st', 'sk next st', 'sk 1 st'] : [`skip next ${step.count} sts`, `sk ${step.count} sts`])
    case 'skip-space':
      return oneOf(draw, ['skip next ch-sp', 'sk next ch-sp'])
    case 'chain':
      return `ch ${step.chains}`
    case 'space':
      return `${step.of === 1 ? '' : `${step.of} `}${step.stitch} in next ch-${step.chains} sp`
    case 'group':
      return `(${step.stitch}, ch ${step.chains}, ${step.stitch}) in next st`
    case 'everything':
      return `${step.stitch} in each st and in each ch-sp ${end}`
    case 'each':
      if (step.keepBack > 0) return `${step.stitch} in each st to last ${step.keepBack === 1 ? 'st' : `${step.keepBack} sts`}`
      return oneOf(draw, [`${step.stitch} in each st ${end}`, plain ? `${step.stitch} in each st ${end}` : `${step.stitch} ${flat ? 'across' : 'around'}`])
    case 'times': {
      const inner = wordsFor(step.steps, { ...manner, inRepeat: true })
      if (manner.inRepeat) return oneOf(draw, [`(${inner}) ${step.times} times`, ...(step.times === 2 ? [`(${inner}) twice`] : [])])
      const ways = [
        `[${inner}] ${step.times} times`,
        ...(step.times > 1 ? [`*${inner}; rep from * ${step.times - 1} more ${step.times === 2 ? 'time' : 'times'}`] : []),
        ...(step.times === 2 ? [`[${inner}] twice`] : []),
        ...(plain ? [] : [`(${inner}) x ${step.times}`, `[${inner}] ${step.times}x`]),
      ]
      return oneOf(draw, ways)
    }
    case 'fill': {
      const inner = wordsFor(step.steps, { ...manner, inRepeat: true })
      return `*${inner}; rep from * ${step.keepBack > 0 ? `to last ${step.keepBack === 1 ? 'st' : `${step.keepBack} sts`}` : end}`
    }
    case 'leave':
      return oneOf(draw, ['leave rem sts unworked', 'leave remaining sts unworked'])
  }
}
