name-tied-cord = cord with the adapter
name-neutral-microwave = neutral that microwave and space heater share
