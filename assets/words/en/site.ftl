# Names of things of the site.
