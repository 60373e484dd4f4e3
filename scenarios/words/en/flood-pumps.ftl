drill-flood-pumps-title = Flood pumps
drill-flood-pumps-summary = Before dawn, water stands around the panel in the basement. The power is still on, but not for long. The sump pump and the septic pump can be reached by the dry stairs.
drill-flood-pumps-goal = Get both pumps running within 15 minutes of the outage, one after the other. Do not touch the wet panel. Call the utility.
drill-flood-pumps-note = A wet panel can kill. You can stop at any time.
