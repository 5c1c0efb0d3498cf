package ring

// Above uses them.
var Above = First{}
