/** A name as the source of a regular expression: each of its signs stands for any one, since words that were read may write a sign otherwise. */
export const namePattern = (name: string): string => name.replace(/[^\p{L}\d ]/gu, '.')
