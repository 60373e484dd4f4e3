name-lent-cord = neighbor's cord
name-strip = strip with two plugs
