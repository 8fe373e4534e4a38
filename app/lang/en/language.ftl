# What the language is called, and the locales by which browsers write its numbers and lists.
name = English
locale = en
# Without a comma before the last "and".
lists = en-GB
