drill-where-to-put-it-title = Where to put it
drill-where-to-put-it-summary = A townhouse with shared walls. The back step is handy. The window stands open, and somebody has taken the battery out of the alarm.
drill-where-to-put-it-goal = Start the generator where its gas reaches nobody, here or next door. Shut the window. Have an alarm that you have tested. Leave the engine running.
drill-where-to-put-it-note = The gas can reach people in this drill. You can stop at any time.
predict-gas-from-that-place = The engine has started. How many parts per million of carbon monoxide are indoors in 30 minutes, if nobody touches anything?
