/** What every task begins with: a fresh browser, the app open, and an ear for errors that the page only tells the console. */
import { test as base, expect, type Page } from '@playwright/test'

export const SCREENS = [
  { name: 'on a desk', width: 1440, height: 900 },
  { name: 'on a tablet', width: 820, height: 1180 },
] as const

export const test = base.extend<{ errors: string[] }>({
  errors: [
    async ({ page }, use) => {
      const errors: string[] = []
      page.on('console', (message) => message.type() === 'error' && errors.push(message.text()))
      page.on('pageerror', (error) => errors.push(String(error)))
      await use(errors)
      expect(errors, 'errors on the console').toEqual([])
    },
    { auto: true },
  ],
})

export { expect, type Page }
