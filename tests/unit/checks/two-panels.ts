/** Two panels of 8 stitches and 6 rows, the second as the first, and what is written behind them. */
export const twoPanels = (behind: string): string => `  - name: Left panel
    rows: |
      Foundation: Ch 9.
      Row 1 (RS): Sc in 2nd ch from hook and in each ch across. (8)
      Rows 2-6: Ch 1, turn, sc in each st across. Fasten off. (8)
  - name: Right panel
    rows: |
      Rows 1-6: As for Left panel.
${behind}`
