import type { LanguageName } from '../../types.ts';

export const about: LanguageName = { name: '简体中文', locale: 'zh-CN' };
