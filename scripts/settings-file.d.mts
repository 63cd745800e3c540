export function loadSettingsFile(): void
