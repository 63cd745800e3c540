// Says on a card whose phone this is, as a player does. Stories share the demonstration: a name that another story's phone
// has taken already is taken over on purpose.

import { expect, type Page } from '@playwright/test'

export async function chooseHolder(page: Page, name: string): Promise<void> {
  await page.getByRole('button', { name }).click()
  const takeOver = page.getByRole('button', { name: 'Yes, use this phone now' })
  const scores = page.getByRole('radiogroup').first()
  await expect(takeOver.or(scores)).toBeVisible()
  if (await takeOver.isVisible()) await takeOver.click()
  await expect(scores).toBeVisible()
}
