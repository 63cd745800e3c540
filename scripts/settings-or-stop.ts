// A wrong setting is for whoever runs the installation: one line for each, not our stack.
import { startSettings } from '../lib/society/first-start'

export function settingsOrStop(): ReturnType<typeof startSettings> {
  try {
    return startSettings()
  } catch (fault) {
    console.error(fault instanceof Error ? fault.message : fault)
    process.exit(1)
  }
}
