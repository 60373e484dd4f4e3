name-tied-cord = cord with the adapter
