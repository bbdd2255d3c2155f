import { DefaultConfigurationProvider } from 'langium';

/** Where an editor keeps the settings of this language. */
export const settingsSection = 'boothwright';

export class BoothConfigurationProvider extends DefaultConfigurationProvider {
  protected override toSectionName(): string {
    return settingsSection;
  }
}
