### No native speaker has read this yet.

name = Español
locale = es
lists = es
