package lay

// Task is what a cloth names pieces for. A rule of the cloth has its own; its words are in
// fabric/words.
type Task string

// The tasks of pieces.
const (
	ToGoOneWay       Task = "one way"
	ToBeCentred      Task = "centred"
	ToHangSideBySide Task = "side by side"
	ToLieOnTheBorder Task = "border"
	ToBearAMotif     Task = "motif"
)
