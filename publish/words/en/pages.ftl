# What layouts put on the pages of a booklet by themselves.

page-contents = Contents
page-sizes = Sizes
page-you-will-need = You will need
# Labels of boxes and of what stands beside a step.
page-note = Note
page-tip = Tip
page-caution = Caution
# Before the numbers of pages.
page-sheet-on-page = Sheet on page
page-sheets-on-pages = Sheets on pages
# Behind the title of the pattern, where a file is not its booklet.
page-edition-templates = templates
page-edition-full-size = full-size
page-edition-kits = kits
# What a reader who cannot see it is told of a picture.
page-photograph = Photograph of { $title }.
page-logo = { $studio }, logo
