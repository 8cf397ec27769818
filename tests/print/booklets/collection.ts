import { readFileSync } from 'node:fs'
import { bookletInSize } from '../../../src/booklet/booklet-in-size.ts'
import { bookletsInBothTerms } from '../../../src/booklet/booklet-in-terms.ts'
import type { Booklet } from '../../../src/booklet/booklet.ts'
import { makeBooklet } from '../../../src/booklet/make-booklet.ts'
import { checkPattern } from '../../../src/pattern/check-pattern.ts'

const checked = (name: string) => checkPattern({ path: `patterns/${name}.md`, text: readFileSync(`patterns/${name}.md`, 'utf8') })

export const names = ['float', 'shingle-cloth', 'harbour-block', 'bollard-hat', 'galley-mat', 'regatta-pot', 'skiff-cushion', 'drift-net-runner', 'deckhand-top'] as const

/** A pattern of the collection as it is printed. */
export const fromCollection = (name: string): Booklet => makeBooklet(checked(name))

/** The same in one of its sizes, from 0. */
export const inSize = (name: string, size: number): Booklet => bookletInSize(checked(name), size)

/** The same in the other terms. */
export const inOtherTerms = (name: string): Booklet => bookletsInBothTerms(checked(name)).other!.booklet
