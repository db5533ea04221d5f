import { useModule } from '@leat/core/module';

useModule();
