# The lesson for a class of two hours.

lesson-two-hours-title = Two hours with a class
lesson-two-hours-about = What gas and the street line do, then hands on, then a short test. For a hall with one screen or many.
sitting-evening = One evening
talk-welcome = Welcome. Say what is real here and what is not. A mistake hurts no one and is why we are here. Anyone may step back at any time.
talk-what-tonight = Ask: what would you do tonight if the power went out? Let each write two lines.
talk-which-way = Sort the six sound ways. Which one is yours? Which needs an electrician and a permit first?
talk-pause = A break.
talk-look-back = Ask first, tell second: what happened, how did it feel, why, and what next?
talk-go-home = Name one thing to change before the next storm. Local code and your utility come first.
