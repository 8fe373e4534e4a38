### No native speaker has read this yet.

name = Français
locale = fr
lists = fr
