"""`python -m publish` is the `foldwork` command."""

import sys

from publish.cli import main

sys.exit(main())
