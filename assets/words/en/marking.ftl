# Marking: criteria, findings, stages, sources.
