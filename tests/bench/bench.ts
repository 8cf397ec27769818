import { checkBench } from './check-bench.ts'
import { growthBench } from './growth-bench.ts'
import { printBench } from './print-bench.ts'
import { typstBench } from './typst-bench.ts'

// `npm run bench`: figures as multiples of something measured in the same run, so that they hold on a fast machine and on a slow one.
const found = [...checkBench(), ...growthBench(), ...(await printBench()), ...(await typstBench())]
const lines = [['what', 'ratio', 'measured'], ...found.map(({ name, ratio, detail }) => [name, ratio.toFixed(2), detail])]
const width = Math.max(...found.map(({ name }) => name.length))
process.stdout.write(lines.map(([name = '', ratio = '', detail = '']) => `${name.padEnd(width)}  ${ratio.padStart(5)}  ${detail}\n`).join(''))
